/** The text of a new `orchard.yaml` and of a form for the soil report, from a few answers. Pure; what is written loads again. */
import type { Facts } from '../reason/notice.ts';
import { labNamed } from '../tables/labs.ts';
import type { Language } from '../words/words.ts';
import { say } from '../words/words.ts';
import { parseWhere, NOWHERE } from './where.ts';

/** Answers as typed; '' or nothing where the grower does not know. Days as "12 April"; a bag as its label says it. */
export type NewOrchard = {
  readonly name: string;
  readonly where: string;
  readonly budBreak: string;
  readonly lastFrost: string;
  readonly firstFrost: string;
  readonly lab: string;
  readonly zones: readonly string[];
  readonly trees: readonly NewTree[];
  readonly shed: readonly string[];
  readonly store: readonly string[];
};
/** A tree's name and the facts of its line. */
export type NewTree = { readonly name: string; readonly line: string };

export const FORM_FILE = 'soil/report.txt';
export const NO_ANSWERS: NewOrchard = { name: '', where: '', budBreak: '', lastFrost: '', firstFrost: '', lab: '', zones: [], trees: [], shed: [], store: [] };

/** What lines of the form a grower fills in, in the words that reports use. */
const FORM_LINES = ['taken:', 'depth:', 'pH:', 'buffer pH:', 'Phosphorus (P):', 'Potassium (K):', 'Magnesium (Mg):', 'Calcium (Ca):', 'Organic matter:', 'CEC:', 'texture:'] as const;
const METHOD_LINES = ['phosphorus method:', 'potassium method:', 'buffer pH method:'] as const;

export const languageOf = (o: NewOrchard): Language => (parseWhere(o.where) ?? NOWHERE).language;

/** "Gate apple: apple, semi-dwarf": the name ends at the last colon. Null without a name or without facts. */
export function splitTree(typed: string): NewTree | null {
  const at = typed.lastIndexOf(':');
  const name = typed.slice(0, at).trim().replace(/^(["'])(.*)\1$/, '$2').trim();
  const line = typed.slice(at + 1).trim().replace(/[,;.]+$/, '');
  return at < 0 || name === '' || line === '' ? null : { name, line };
}

/** The places whose soil is sampled: those named, else one for the whole ground. */
function zonesOfNew(o: NewOrchard): readonly string[] {
  return o.zones.length > 0 ? o.zones : [say(languageOf(o), 'new', 'zone')];
}

/** Where the whole ground is one zone, every tree in it stands there; one in a tub does not. */
function lineOf(tree: NewTree, zones: readonly string[]): string {
  const items = tree.line.split(/,\s+/).map((i) => i.trim().toLowerCase());
  const [zone] = zones;
  const named = zone === undefined || items.includes(zone.toLowerCase());
  return zones.length > 1 || named || items.some((i) => i.startsWith('tub ')) ? tree.line : `${tree.line}, ${zone}`;
}

/** `orchard.yaml`. What nobody told stands as a comment with an example. */
export function orchardText(o: NewOrchard): string {
  const L = languageOf(o);
  const zones = zonesOfNew(o);
  const note = (key: NoteKey, facts: Facts = {}): string => `# ${say(L, 'new', key, facts)}`;
  const fact = (key: string, value: string, example: ExampleKey): string => (value ? `${key}: ${scalar(value)}` : `# ${key}: ${say(L, 'new', example)}`);
  const bags = (key: 'shed' | 'store'): string[] => (o[key].length > 0 ? [`${key}:`, ...o[key].map((b) => `  - ${scalar(b)}`)] : [`# ${key}:`, `#   - ${say(L, 'new', key === 'shed' ? 'example-shed' : 'example-store')}`]);
  return [
    fact('orchard', o.name, 'example-name'),
    note('note-where'), fact('where', o.where, 'example-where'),
    note('note-spring'), fact('bud-break', o.budBreak, 'example-bud-break'), ...(o.lastFrost ? [`last-frost: ${scalar(o.lastFrost)}`] : []),
    note('note-frost'), fact('first-frost', o.firstFrost, 'example-first-frost'),
    '', note('note-soil', { lab: oneLine(o.lab) }), 'soil:', ...zones.map((z, i) => `  ${scalar(z)}: ${FORM_FILE}${zones.length > 1 ? `, sample ${i + 1}` : ''}`),
    '', note('note-trees'), note('note-facts'), 'trees:', ...o.trees.map((t) => `  ${scalar(t.name)}: ${scalar(lineOf(t, zones))}`),
    '', note('note-shed'), ...bags('shed'), note('note-store'), ...bags('store'), '',
  ].join('\n');
}
type NoteKey = 'note-where' | 'note-spring' | 'note-frost' | 'note-soil' | 'note-trees' | 'note-facts' | 'note-shed' | 'note-store';
type ExampleKey = 'example-name' | 'example-where' | 'example-bud-break' | 'example-first-frost';

/** The form: a sample for each zone, a line for each value; behind the colon stands nothing, so that nothing is read before it is filled in. */
export function reportForm(o: NewOrchard): string {
  const L = languageOf(o);
  const zones = zonesOfNew(o);
  // Whose methods are held: by the name they are held under, since what was typed might be read as a value.
  const lab = labNamed(o.lab);
  return [
    `# ${say(L, 'new', 'form-how')}`, `# ${say(L, 'new', 'form-unknown')}`, ...(lab ? ['', `lab: ${lab.name}`] : []),
    ...zones.flatMap((z, i) => ['', headingOf(z, i + 1), ...FORM_LINES]),
    '', `# ${say(L, 'new', 'form-method')}`, ...METHOD_LINES, '',
  ].join('\n');
}

/** The zone's name beside the number, unless the reader could take it for a value or for another sample. */
function headingOf(zone: string, n: number): string {
  const name = zone.replace(/[^\p{L}\p{M}\d.'&-]+/gu, ' ').trim();
  return name === '' || /^sample\b/i.test(name) || /ph.*\d/i.test(name) ? `Sample ${n}` : `Sample ${n}: ${name}`;
}

const oneLine = (text: string): string => text.replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, ' ').trim();

/** Plain where YAML cannot misread it, else in double quotation marks. */
function scalar(text: string): string {
  const plain = /^[\p{L}\d$£€][\p{L}\p{M}\d ,.'’()&/%+$£€-]*$/u.test(text) && !/^(?:y|yes|n|no|on|off|true|false|null)$/i.test(text) && !/^[\d.,+-]+$/.test(text);
  return plain ? text : JSON.stringify(text).replace(/[\u007f-\u009f\u2028\u2029\ufeff]/g, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
