/** What a grower never uses: "never: chloride, ammonium nitrate"; "never: mineral" is organic only. */
import type { Bag } from './bag.ts';

export const BANS = ['mineral', 'chloride', 'nitrate', 'ammonium nitrate', 'urea'] as const;
export type Ban = (typeof BANS)[number];

/** Null where a word is none of them. */
export function bansOf(text: string): readonly Ban[] | null {
  const words = text.toLowerCase().split(/[,;]|\band\b/).map((w) => w.trim().replace(/^(?:organic only|only organic|synthetics?|artificials?)$/, 'mineral').replace(/s$/, '')).filter(Boolean);
  return words.length > 0 && words.every((w) => (BANS as readonly string[]).includes(w)) ? (words as Ban[]) : null;
}

export function isBanned(bag: Bag, bans: readonly Ban[]): boolean {
  const is: Readonly<Record<Ban, boolean>> = {
    mineral: bag.organic === null && !/\borganic\b/i.test(bag.label),
    chloride: bag.chloride, nitrate: bag.nitrate,
    'ammonium nitrate': bag.material?.id === 'ammonium-nitrate' || bag.material?.id === 'ammonium-sulphate-nitrate',
    urea: bag.material?.id === 'urea',
  };
  return !bag.amends && bans.some((b) => is[b]);
}
