// Brazil, lime by exchangeable aluminium: t/ha at PRNT 100 %, 0 to 20 cm, from cmolc/dm3; one rule for soils of more
// than 20 % clay and, for the rest, one and a half times the aluminium, which brings the pH to about 5.5.
// Typed from research notes of the page (read).
import { published } from '../helpers.ts';
import { type Case, expectPrinted } from '../ph.ts';

const source = {
  id: 'brazil-aluminium',
  title: 'Calagem pelo método do alumínio trocável',
  publisher: 'Brazilian exchangeable-aluminium method',
  url: null,
  mark: 'read',
} as const;

const flags = (aluminium: number, calcium: number, magnesium: number, texture: string) => ({
  where: 'Rio Grande do Sul, Brazil', now: 4.6, goal: 5.5, aluminium, calcium, magnesium, texture,
});

const clayey = (al: number, ca: number, mg: number): number => 2 * al + 2 - (ca + mg);
const other = (al: number): number => 1.5 * al;

// Exchangeable aluminium, calcium and magnesium.
const points = [
  [0.5, 0.6, 0.3], [0.8, 1.0, 0.5], [1.0, 0.5, 0.2], [1.2, 0.8, 0.4], [1.5, 1.2, 0.6], [1.8, 0.3, 0.2], [2.0, 1.0, 0.8], [2.5, 0.4, 0.1],
] as const;

published(source, () => {
  expectPrinted(source.id, 't/ha', points.map(([al, ca, mg]): Case => [flags(al, ca, mg, 'clay'), Number(clayey(al, ca, mg).toFixed(3))]));
  expectPrinted(source.id, 't/ha', points.map(([al, ca, mg]): Case => [flags(al, ca, mg, 'sand'), Number(other(al).toFixed(3))]));

  // By hand: 2.4 + 2 - 1.2 on clay, 1.8 on sand.
  expectPrinted(source.id, 't/ha', [
    [flags(1.2, 0.8, 0.4, 'clay'), 3.2],
    [flags(1.2, 0.8, 0.4, 'sand'), 1.8],
  ]);
});
