/** Which size of tree a rootstock makes. Common nursery practice; names as printed on the tag, without marks and blanks. */
import type { Cite } from '../reason/figure.ts';
import type { Size } from './crops.ts';

export const ROOTSTOCK_CITE: Cite = { source: 'medlar', at: 'rootstock', mark: 'practice' };

export const ROOTSTOCKS: Readonly<Record<Size, readonly string[]>> = {
  dwarf: ['m9', 'm27', 'm26', 'b9', 'budagovsky9', 'g11', 'g16', 'g41', 'g65', 'geneva11', 'geneva41', 'p22', 'quincec', 'gisela3', 'gisela5', 'pixy', 'vvi', 'vva1', 'krymsk1', 'torinel', 'flyingdragon', 'pajam1', 'pajam2', 'dwarf'],
  'semi-dwarf': ['m7', 'm116', 'mm106', 'mm102', 'g30', 'g210', 'g890', 'g935', 'geneva30', 'b118', 'quincea', 'ba29', 'oxf87', 'ohxf87', 'ohf87', 'oxf333', 'ohxf333', 'gisela6', 'gisela12', 'colt', 'stjulien', 'stjuliena', 'montclare', 'krymsk5', 'krymsk6', 'citation', 'maxma14', 'sydo', 'semidwarf'],
  standard: ['mm111', 'm25', 'antonovka', 'bittenfelder', 'seedling', 'oxf97', 'ohxf97', 'brompton', 'myrobalan', 'mazzard', 'f12', 'mahaleb', 'lovell', 'nemaguard', 'halford', 'trifoliate', 'gf677', 'cadaman', 'garnem', 'myrobalan29c', 'sl64', 'carrizo', 'standard'],
};
