/** The outer shape of `orchard.yaml`: which keys there are, and whether text, a list or named entries stand behind each. What stands inside a line has its own grammar. */
import { isMap, isScalar, isSeq } from 'yaml';
import type { Node, YAMLMap } from 'yaml';
import { suggest } from '../reason/suggest.ts';

/** Something of another form than the key wants; `path` from the outermost key. */
export type Fault = { readonly path: readonly string[]; readonly node: Node | null };
type Check = (node: unknown, path: readonly string[]) => Fault[];

const isNone = (node: unknown): boolean => node === null || node === undefined || (isScalar(node) && node.value === null);
const fault = (node: unknown, path: readonly string[]): Fault[] => [{ path, node: (node ?? null) as Node | null }];
/** No tree and no label is longer; taking one apart lasts by more than its length. */
const LONGEST_TEXT = 4000;
const text: Check = (node, path) => (isScalar(node) && ['string', 'number', 'boolean'].includes(typeof node.value) && String(node.value).length <= LONGEST_TEXT ? [] : fault(node, path));
const list: Check = (node, path) => (isSeq(node) ? node.items.flatMap((item, i) => text(item, [...path, String(i)])) : fault(node, path));
const named = (of: Check): Check => (node, path) => (isMap(node) ? node.items.flatMap((pair) => of(pair.value, [...path, nameOf(pair.key)])) : fault(node, path));
const orNone = (of: Check): Check => (node, path) => (isNone(node) ? [] : of(node, path));
const textOrList: Check = (node, path) => (isSeq(node) ? list : text)(node, path);
const textListOr = (of: Check): Check => (node, path) => (isMap(node) ? of : textOrList)(node, path);

/** Each key of the file with what may stand behind it. */
const KEYS_OF: Readonly<Record<string, Check>> = {
  orchard: orNone(text), where: orNone(text), language: orNone(text), 'bud-break': orNone(text), 'last-frost': orNone(text), 'first-frost': orNone(text), water: orNone(text), never: orNone(text),
  soil: orNone(textListOr(named(orNone(textOrList)))),
  trees: named(orNone((node, path) => (isMap(node) ? named(textOrList) : text)(node, path))),
  shed: orNone(list), store: orNone(list),
};
export const KEYS = Object.keys(KEYS_OF);

/** Other words that growers have for a key. */
const MEANT: Readonly<Record<string, string>> = {
  name: 'orchard', title: 'orchard', place: 'where', location: 'where', address: 'where', region: 'where', country: 'where', state: 'where', county: 'where',
  report: 'soil', reports: 'soil', 'soil test': 'soil', 'soil tests': 'soil', test: 'soil', plants: 'trees', bushes: 'trees', bags: 'shed', feeds: 'shed', have: 'shed', home: 'shed', shop: 'store', shops: 'store', buy: 'store',
};
/** The keys that an unknown one may stand for. */
export function likelyKeys(read: string): string[] {
  const word = read.toLowerCase().replace(/[-_ ]+/g, ' ').trim();
  return Object.hasOwn(MEANT, word) ? [MEANT[word]!] : suggest(read, KEYS);
}

// A key may be a whole map, whose own text can be longer than all memory.
const nameOf = (key: unknown): string => (isScalar(key) ? String(key.value) : '?');

/** Keys that there are none of, and whatever has another form than its key wants; all of them. */
export function shapeFaults(map: YAMLMap): { unknown: { key: string; node: Node | null }[]; faults: Fault[] } {
  const pairs = map.items.map((p) => ({ key: nameOf(p.key), pair: p }));
  const known = ({ key }: { key: string }): boolean => Object.hasOwn(KEYS_OF, key);
  return {
    unknown: pairs.filter((p) => !known(p)).map(({ key, pair }) => ({ key, node: pair.key as Node | null })),
    faults: pairs.filter(known).flatMap(({ key, pair }) => KEYS_OF[key]!(pair.value, [key])),
  };
}
