/** S, Ca, Mg and Cl of a bag as elements: by its label, or else by what the material mostly holds. */
import type { Material, OtherForm } from '../tables/materials.ts';
import { ELEMENT_SHARE } from '../units/substance.ts';
import type { Others } from './label-grade.ts';

export type OtherShares = { readonly S?: number; readonly Ca?: number; readonly Mg?: number; readonly Cl?: number };

/** Each element by its own name first, then by its oxide. */
const FORMS: Readonly<Record<keyof OtherShares, readonly (readonly [OtherForm, number])[]>> = {
  S: [['S', 1], ['SO3', ELEMENT_SHARE.SO3.share]], Ca: [['Ca', 1], ['CaO', ELEMENT_SHARE.CaO.share]], Mg: [['Mg', 1], ['MgO', ELEMENT_SHARE.MgO.share]], Cl: [['Cl', 1]],
};

/** `hundred` is what the label's numbers are parts of. */
export function othersOf(printed: Others, material: Material | null, hundred: number): OtherShares {
  const shares: { -readonly [E in keyof OtherShares]: number } = {};
  for (const [element, forms] of Object.entries(FORMS) as [keyof OtherShares, (typeof FORMS)['S']][]) {
    const told = forms.find(([form]) => printed[form] !== undefined);
    const usual = forms.find(([form]) => material?.others?.[form] !== undefined);
    const span = usual ? material!.others![usual[0]]! : null;
    const share = told ? (printed[told[0]]! * told[1]) / hundred : span ? ((span[0] + span[1]) / 200) * usual![1] : 0;
    if (share > 0) shares[element] = share;
  }
  return shares;
}
