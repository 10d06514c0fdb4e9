/** The shape of a fertiliser material: what is sold under a name, and what it mostly holds. */
import type { Cite } from '../reason/figure.ts';

export type Span = readonly [low: number, high: number];
export type MaterialKind = 'mineral' | 'meal' | 'manure' | 'compost' | 'ash';
/** What a label may print beside N, P and K, in the form it prints. */
export type OtherForm = 'S' | 'Ca' | 'Mg' | 'Cl' | 'SO3' | 'CaO' | 'MgO';

export type Material = {
  readonly id: string;
  /** As growers type them, without accents, in small letters; "sulph" stands for "sulf" too. The longest that a label holds wins. */
  readonly names: readonly string[];
  /** Short names that count in capitals alone: CAN is no can. */
  readonly codes?: readonly string[];
  readonly kind: MaterialKind;
  /** N, P2O5 and K2O in % as mostly sold; a label outranks it. */
  readonly sold: { readonly grade: readonly [n: number, p: number, k: number]; readonly unit: '%'; readonly cite: Cite };
  /** How far sources or bags differ; the cite is of what lies away from `sold`. */
  readonly spread?: { readonly n?: Span; readonly p2o5?: Span; readonly k2o?: Span; readonly unit: '%'; readonly cite: Cite };
  /** Nothing else is sold with these three numbers, so they name it. */
  readonly byGrade?: true;
  /** So various that only its label tells. */
  readonly bagOnly?: true;
  readonly others?: { readonly [F in OtherForm]?: Span } & { readonly unit: '%'; readonly cite: Cite };
  /** Of a heap, a loose bag or a liquid. */
  readonly bulk?: { readonly low: number; readonly high: number; readonly unit: 'lb/yd3' | 'lb/ft3' | 'g/mL'; readonly cite: Cite };
  readonly ozPerCup?: Span;
  /** Of the weight of a cup. */
  readonly cite?: Cite;
  readonly chloride?: true;
  readonly temptsDogs?: true;
  readonly nitrate?: true;
  readonly oxidiser?: true;
  readonly slow?: true;
  readonly liquid?: true;
  /** Fresh from the animal, unless the label says otherwise. */
  readonly fresh?: true;
};
