/** Which size of tree a rootstock makes, by the name on its tag. */
import { suggest } from '../reason/suggest.ts';
import type { Size } from '../tables/crops.ts';
import { SIZES } from '../tables/crops.ts';
import { ROOTSTOCKS } from '../tables/rootstocks.ts';

const plain = (name: string): string => name.toLowerCase().replace(/[^a-z\d]/g, '');
const digits = (name: string): string => name.replace(/\D/g, '');

/** The size that it makes; nothing for a stock that is not known. */
export const sizeOn = (rootstock: string): Size | undefined => SIZES.find((s) => ROOTSTOCKS[s].includes(plain(rootstock)));

/** Known stocks with a letter more or less than the name, "MM106" for "M106"; those of another number are other stocks. */
export const likeStock = (name: string): string[] => suggest(plain(name), SIZES.flatMap((s) => ROOTSTOCKS[s]), 2)
  .filter((known) => digits(name) !== '' && digits(known) === digits(name) && Math.abs(known.length - plain(name).length) === 1).map((known) => known.toUpperCase());
