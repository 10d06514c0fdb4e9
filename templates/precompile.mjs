/** A Handlebars template as a module that needs only the small runtime. Text templates are not escaped; unknown fields throw. */
import { readFileSync } from 'node:fs';
import Handlebars from 'handlebars';

export function precompiled(path) {
  const source = readFileSync(path, 'utf8');
  const spec = Handlebars.precompile(source, { strict: true, knownHelpersOnly: true, noEscape: path.endsWith('.txt.hbs') });
  return `export default ${spec}`;
}
