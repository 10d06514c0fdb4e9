/** Every regular expression of the sources: the literals by TypeScript's own syntax tree, the others as they are made while Medlar works. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

export type Pattern = { readonly source: string; readonly flags: string; readonly at: string };
const root = fileURLToPath(new URL('../../src/', import.meta.url));

export function literals(): Pattern[] {
  const found: Pattern[] = [];
  for (const file of readdirSync(root, { recursive: true }).map(String).filter((f) => f.endsWith('.ts') && !f.endsWith('.d.ts')).sort()) {
    const tree = ts.createSourceFile(file, readFileSync(root + file, 'utf8'), ts.ScriptTarget.ES2023, true);
    const walk = (node: ts.Node): void => {
      if (ts.isRegularExpressionLiteral(node)) {
        const [, source, flags] = /^\/(.*)\/([a-z]*)$/s.exec(node.text)!;
        found.push({ source: source!, flags: flags!, at: `${file}:${tree.getLineAndCharacterOfPosition(node.getStart()).line + 1}` });
      }
      ts.forEachChild(node, walk);
    };
    walk(tree);
  }
  return found;
}

/** What the sources make of tables while `work` runs; what libraries make for themselves is left out. */
export async function madeWhile(work: () => Promise<void>): Promise<Pattern[]> {
  const found: Pattern[] = [];
  const Real = RegExp;
  globalThis.RegExp = new Proxy(Real, {
    construct(target, args, as) {
      const made = Reflect.construct(target, args, as) as RegExp;
      const maker = new Error().stack?.split('\n')[2] ?? '';
      const [, at] = /\/src\/([\w/.-]+\.ts:\d+)/.exec(maker) ?? [];
      if (at !== undefined) found.push({ source: made.source, flags: made.flags, at });
      return made;
    },
  });
  try {
    await work();
  } finally {
    globalThis.RegExp = Real;
  }
  return found;
}
