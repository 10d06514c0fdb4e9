// Penn State Agronomy Guide, part 1 section 2, limestone by exchangeable acidity: lb/acre of calcium carbonate
// equivalent in fine-sized material, about 7 in deep. Typed from research notes of the page (read).
import { published } from '../helpers.ts';
import { type Flags, expectPrinted } from '../ph.ts';

const source = {
  id: 'penn-agronomy-guide',
  title: 'Agronomy Guide: limestone recommendations',
  publisher: 'Penn State Extension',
  url: 'http://agguide.agronomy.psu.edu/cm/sec2/sec24e1.cfm',
  mark: 'read',
} as const;

const flags = (acidity: number, now = 4.8) => ({ where: 'Pennsylvania, US', now, acidity });

const toSeven = (acidity: number): number => acidity * 1000;
// Above an acidity of 4.0; under it the guide gives 2,000 lb wherever the pH is below 6.5.
const toSixAndAHalf = (acidity: number): number => (acidity > 4 ? acidity * 840 : 2000);

const acidities = [2.0, 2.6, 3.3, 3.9, 4.5, 5.2, 6.5, 7.8, 9.0, 10.3, 12.3, 15.5, 20.0] as const;

published(source, () => {
  for (const [goal, pounds] of [[7.0, toSeven], [6.5, toSixAndAHalf]] as const) {
    expectPrinted(source.id, 'lb/acre', acidities.map((acidity): readonly [Flags, number] => [
      { ...flags(acidity), goal }, Number(pounds(acidity).toFixed(1)),
    ]), 0.5);
  }

  // By hand: acidity 3.5, pH 6.2, goal 6.5.
  expectPrinted(source.id, 'lb/acre', [[{ ...flags(3.5, 6.2), goal: 6.5 }, 2000]], 0.5);
});
