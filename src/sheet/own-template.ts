/**
 * A grower's own template: its syntax tree is walked against the view's schema before it runs, since a loop over a
 * misspelt field would otherwise vanish without a word. Only #if, #unless, #each, #with and else are allowed.
 */
import Handlebars from 'handlebars';
import * as z from 'zod';
import type { Notice, Place } from '../reason/notice.ts';
import { notice, placeIn } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import type { SheetForm, Template } from './render.ts';
import { viewSchema } from './view.ts';

const BLOCKS = ['if', 'unless', 'each', 'with'];
/** `loop`: what is around it runs once for each of a list. */
type Shape = { readonly properties?: Record<string, Shape>; readonly items?: Shape; readonly loop?: true };
/** What a loop knows of itself. */
const OF_LOOP = ['index', 'key', 'first', 'last'];

export function compileOwn(source: string, file: string, form: SheetForm): { template: Template | null; notices: readonly Notice[] } {
  let program: hbs.AST.Program;
  try {
    program = Handlebars.parse(source);
  } catch (e) {
    return { template: null, notices: [notice('template-broken', 'error', { file, why: (e as Error).message.split('\n')[0]! })] };
  }
  const notices: Notice[] = [];
  // Lines as Handlebars counts them.
  const lines = source.split(/\r\n?|\n/);
  const at = (node: hbs.AST.Node): Place => {
    const { start } = node.loc;
    return placeIn(file, start.line, lines[start.line - 1]!, start.column, start.column);
  };
  walk(program, [z.toJSONSchema(viewSchema) as Shape], { file, notices, at });
  if (notices.length > 0) return { template: null, notices };
  const run = Handlebars.create().compile(source, { strict: true, knownHelpersOnly: true, noEscape: form === 'text' });
  return { notices, template: (view) => run(view, { allowProtoPropertiesByDefault: false }) };
}

type Watch = { readonly file: string; readonly notices: Notice[]; readonly at: (node: hbs.AST.Node) => Place };

function walk(program: hbs.AST.Program, scope: readonly Shape[], watch: Watch): void {
  for (const statement of program.body) {
    if (statement.type === 'MustacheStatement') {
      const { path, params } = statement as hbs.AST.MustacheStatement;
      if (params.length > 0) refuse(watch, statement, path);
      else {
        const shape = look(path, scope, watch);
        const within = shape?.properties ?? shape?.items?.properties;
        // Of several things Handlebars would print "[object Object]".
        if (within) watch.notices.push(notice('template-whole', 'error', { file: watch.file, read: (path as hbs.AST.PathExpression).original, guess: Object.keys(within)[0]! }, watch.at(statement)));
      }
    } else if (statement.type === 'BlockStatement') block(statement as hbs.AST.BlockStatement, scope, watch);
    else if (statement.type !== 'ContentStatement' && statement.type !== 'CommentStatement') watch.notices.push(notice('template-helper', 'error', { file: watch.file, read: statement.type }, watch.at(statement)));
  }
}

function block(node: hbs.AST.BlockStatement, scope: readonly Shape[], watch: Watch): void {
  const name = (node.path).original;
  const param = node.params[0];
  if (!BLOCKS.includes(name) || !param || node.params.length > 1) return refuse(watch, node, node.path);
  const shape = look(param, scope, watch);
  const inner = name === 'each' ? [{ ...shape?.items, loop: true as const }, ...scope] : name === 'with' ? [shape ?? {}, ...scope] : scope;
  if (shape) walk(node.program, inner, watch);
  if (node.inverse) walk(node.inverse, scope, watch);
}

function refuse(watch: Watch, node: hbs.AST.Node, path: hbs.AST.Expression | hbs.AST.PathExpression): void {
  watch.notices.push(notice('template-helper', 'error', { file: watch.file, read: 'original' in path ? String(path.original) : node.type }, watch.at(node)));
}

/** The shape that a path leads to; an unknown field is told with the nearest one that exists. */
function look(expression: hbs.AST.Expression, scope: readonly Shape[], watch: Watch): Shape | null {
  if (expression.type !== 'PathExpression') {
    refuse(watch, expression, expression);
    return null;
  }
  const path = expression as hbs.AST.PathExpression;
  const wrong = (guess = ''): null => {
    watch.notices.push(notice('template-path', 'error', { file: watch.file, read: path.original, guess }, watch.at(path)));
    return null;
  };
  const [data, parts] = path.data ? [path.parts[0]!, path.parts.slice(1)] : [null, path.parts];
  if (data !== null && data !== 'root') return OF_LOOP.includes(data) && parts.length === 0 && scope.some((s) => s.loop) ? {} : wrong();
  let shape = data === 'root' ? scope.at(-1) : scope[path.depth];
  if (!shape) return wrong();
  for (const part of parts) {
    const known: Record<string, Shape> = shape.properties ?? {};
    if (!Object.hasOwn(known, part)) return wrong(suggest(part, Object.keys(known)).join(', '));
    shape = known[part]!;
  }
  return shape;
}
