/** A Handlebars template as a module that needs only the small runtime. Text templates are not escaped; unknown fields throw. */
import { readFileSync } from 'node:fs';
import Handlebars from 'handlebars';

export function precompiled(path) {
  const source = readFileSync(path, 'utf8');
  const spec = Handlebars.precompile(source, { strict: true, knownHelpersOnly: true, noEscape: path.endsWith('.txt.hbs') });
  const lean = spec
    // Where in the file each field stands helps whoever writes a template; this one is written.
    .replace(/\{"start":\{"line":\d+,"column":\d+\},"end":\{"line":\d+,"column":\d+\}\}/g, '0')
    // For a runtime older than ours.
    .replace(/container\.lookupProperty \|\| function\(parent, propertyName\) \{[^}]*\}\s*return undefined\s*\}/g, 'container.lookupProperty');
  return `export default ${lean}`;
}
