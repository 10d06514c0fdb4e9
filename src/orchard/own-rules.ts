/**
 * `rules.yaml`: the grower's own feeding rules, in the shape of the published ones and checked as strictly; every mistake at its line.
 * A rule here leads over every publication for the crops it names.
 */
import { isAlias, isMap, isScalar, isSeq, LineCounter, visit } from 'yaml';
import type { Node } from 'yaml';
import * as z from 'zod/mini';
import { parseYaml, unreadable } from './yaml.ts';
import type { Notice, Place } from '../reason/notice.ts';
import { notice, placeIn } from '../reason/notice.ts';
import { suggest } from '../reason/suggest.ts';
import { RULE_LIMITS } from '../tables/limits.ts';
import type { Rule } from '../tables/rule.ts';
import { gramsOf, isRate } from '../tables/rule.ts';
import { ruleShape, withSense } from '../tables/rule-shape.ts';
import { RULES_FILE } from './files.ts';

export type OwnRules = { readonly rules: readonly Rule[]; readonly notices: readonly Notice[] };

/** What a grower writes; the rest of a published rule is known of it. */
const ownShape = withSense(z.strictObject({ ...z.omit(ruleShape, { source: true, region: true, label: true, cite: true }).shape, from: z.string().check(z.minLength(1)) }));
const KEYS = [...Object.keys(z.omit(ruleShape, { source: true, region: true, label: true, cite: true }).shape), 'from'];
const LARGEST = 200_000;
/** Without a cap of its own a rate meets an old tree some day: so many years, inches, feet. */
const MOST_TIMES: Partial<Record<Rule['by'], number>> = { years: 20, trunk: 20, height: 20, canopy: 40 };

/** Reads the text of the file. Never throws; what is wrong is told, and then no rule of the file holds. */
export function loadRules(source: string): OwnRules {
  const lines = source.split(/\r\n|\n|\r/);
  const counter = new LineCounter();
  if (source.length > LARGEST) return { rules: [], notices: [notice('report-too-large', 'error', { file: RULES_FILE, size: source.length, most: LARGEST })] };
  const fault = unreadable(source, RULES_FILE);
  if (fault) return { rules: [], notices: [fault] };
  const doc = parseYaml(source, counter);
  const at = (start: number, end = start + 1): Place => {
    const from = counter.linePos(Math.min(start, source.length));
    const line = lines[from.line - 1] ?? '';
    return placeIn(RULES_FILE, from.line, line, from.col - 1, Math.min(line.length, from.col - 1 + end - start));
  };
  const placeOf = (node: unknown): Place => at((node as Node | null)?.range?.[0] ?? 0, (node as Node | null)?.range?.[1]);
  const broken = doc.errors.map((e) => notice('yaml-broken', 'error', { yaml: e.code.toLowerCase().replace(/_/g, ' ') }, at(e.pos[0], e.pos[1])));
  let aliased: unknown = null;
  visit(doc, (_, node) => {
    if (isAlias(node) || (node && typeof node === 'object' && (('anchor' in node && node.anchor) || ('tag' in node && typeof node.tag === 'string')))) aliased = node;
    return aliased ? visit.BREAK : undefined;
  });
  if (aliased) return { rules: [], notices: [notice('yaml-alias', 'error', {}, placeOf(aliased))] };
  if (broken.length > 0) return { rules: [], notices: broken };
  if (doc.contents === null || (isScalar(doc.contents) && doc.contents.value === null)) return { rules: [], notices: [] };
  if (!isSeq(doc.contents) || doc.contents.items.some((item) => !isMap(item))) return { rules: [], notices: [notice('rules-shape', 'error', {}, at(0))] };

  const notices: Notice[] = [];
  const rules: Rule[] = [];
  const ids = new Set<string>();
  doc.contents.items.forEach((item, i) => {
    if (!isMap(item)) return;
    const checked = ownShape.safeParse((doc.toJS({ maxAliasCount: 0 }) as unknown[])[i]);
    if (!checked.success) {
      for (const issue of checked.error.issues) {
        if (issue.code === 'unrecognized_keys') notices.push(...issue.keys.map((key) => notice('rule-key', 'error', { read: key, guess: suggest(key, KEYS).join(', '), expected: KEYS.join(', ') }, placeOf(item.items.find((p) => isScalar(p.key) && p.key.value === key)?.key ?? item))));
        else notices.push(misfit(issue, item.getIn(issue.path) !== undefined, placeOf(item.getIn(issue.path, true) ?? item)));
      }
      return;
    }
    const { from, ...own } = checked.data;
    const rule: Rule = { ...own, source: 'own-rules', region: 'own', cite: { source: 'own-rules', at: from, mark: 'read' } };
    if (ids.has(rule.id)) notices.push(notice('name-twice', 'error', { read: rule.id }, placeOf(item)));
    ids.add(rule.id);
    const most = gramsOf(rule, rule.cap ?? (rule.high ?? rule.low) * (MOST_TIMES[rule.by] ?? 1));
    const limit = isRate(rule) ? RULE_LIMITS.gPerM2 : RULE_LIMITS.gPerPlant;
    if (most > limit) notices.push(notice('rule-absurd', 'error', { id: rule.id, grams: Math.round(most), limit, unit: isRate(rule) ? 'g/m²' : 'g' }, placeOf(item)));
    rules.push(rule);
  });
  return { rules: notices.some((n) => n.severity === 'error') ? [] : rules, notices };
}

/** What was expected of one value. */
function misfit(issue: z.core.$ZodIssue, isThere: boolean, place: Place): Notice {
  const key = issue.path.map(String).join(' → ');
  switch (issue.code) {
    case 'invalid_value': return notice('rule-one-of', 'error', { key, list: issue.values.map(String).join(', ') }, place);
    case 'too_small': return notice('rule-more', 'error', { key, least: String(issue.minimum) }, place);
    case 'too_big': return notice('rule-less', 'error', { key, most: String(issue.maximum) }, place);
    // Its message is a key of words, said where the shape is told.
    case 'custom': return notice('rule-value', 'error', { key, why: issue.message }, place);
    default: return isThere ? notice('rule-kind', 'error', { key, kind: issue.code === 'invalid_type' ? issue.expected : '' }, place) : notice('rule-missing', 'error', { key }, place);
  }
}
