/**
 * The tables as JSON, for the bundle of the command line: Node reads a figure from JSON several times faster than from code,
 * and every start of a command reads all of them. What is plain data (numbers, words, lists) is worked out here, once, as the
 * bundle is made; a module that holds anything else (a function, a pattern, a set) is left as it is.
 */
import { readdirSync } from 'node:fs';
import { basename } from 'node:path';
import { build } from 'esbuild';

/** Whether JSON keeps a value whole. Infinity is written as a number that is too large. */
export function isPlain(value) {
  if (typeof value === 'number') return !Number.isNaN(value) && !Object.is(value, -0) && value !== -Infinity;
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return true;
  if (typeof value !== 'object') return false;
  if (Array.isArray(value)) return [...value].every(isPlain);
  return Object.getPrototypeOf(value) === Object.prototype && !Object.hasOwn(value, '__proto__') && Object.values(value).every(isPlain);
}

/** JSON text of a plain value. */
export function jsonOf(value) {
  if (value === Infinity) return '1e999';
  if (Array.isArray(value)) return `[${value.map(jsonOf).join(',')}]`;
  if (value !== null && typeof value === 'object') return `{${Object.entries(value).map(([key, v]) => `${JSON.stringify(key)}:${jsonOf(v)}`).join(',')}}`;
  return JSON.stringify(value);
}

/** Every module of `src/tables` with what it exports. */
async function modulesOf(root) {
  const names = readdirSync(`${root}/src/tables`).filter((name) => name.endsWith('.ts'));
  const { outputFiles: [{ text }] } = await build({
    stdin: { contents: names.map((name, i) => `export * as m${i} from './src/tables/${name}';`).join('\n'), resolveDir: root },
    bundle: true, write: false, format: 'esm', platform: 'neutral', mainFields: ['module', 'main'],
  });
  const all = await import(`data:text/javascript;base64,${Buffer.from(text).toString('base64')}`);
  return new Map(names.map((name, i) => [name, { ...all[`m${i}`] }]));
}

/** The esbuild plugin. */
export const tablesAsJson = (root) => ({
  name: 'tables as JSON',
  async setup(b) {
    const modules = await modulesOf(root);
    b.onLoad({ filter: /src[\\/]tables[\\/][\w-]+\.ts$/ }, ({ path }) => {
      const exported = modules.get(basename(path));
      if (exported === undefined || !isPlain(exported)) return null;
      return { contents: Object.entries(exported).map(([name, value]) => `export const ${name} = ${typeof value === 'object' ? `/* @__PURE__ */ JSON.parse(${JSON.stringify(jsonOf(value))})` : jsonOf(value)};`).join('\n'), loader: 'js' };
    });
  },
});
