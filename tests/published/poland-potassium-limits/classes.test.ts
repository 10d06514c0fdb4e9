// Próby glebowe, limits of potassium content of the soil, mg K2O/100 g; the extractant is not printed (memory:
// Egner-Riehm DL). Typed a second time from a stored text of the page itself. Its five words do not say which class is
// the target: the word alone is tested. Very light, light, medium and heavy are taken as sand, sandy loam, loam, clay.
import { type Class, expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'poland-potassium-limits', title: 'Liczby graniczne dla oceny zawartości potasu w glebie', publisher: 'Próby glebowe, Poland',
  url: 'http://www.probyglebowe.pl/baza-wiedzy/liczby-graniczne-oceny-zawartosci-potasu-glebie/', mark: 'read',
} as const;

const on = (texture: string, veryLow: string, low: string, medium: string, high: string, veryHigh: string) => ({
  where: 'Poland', beside: `Texture: ${texture}`, item: 'potassium', line: 'K2O # mg/100 g Egner-Riehm',
  classes: [[veryLow, 'very-low', null], [low, 'low', null], [medium, 'medium', null], [high, 'high', null], [veryHigh, 'very-high', null]] satisfies Class[],
});

published(source, () => {
  expectClasses([
    on('sand', '<=2.5', '2.6-7.5', '7.6-12.5', '12.6-17.5', '>=17.6'),
    on('sandy loam', '<=5', '5.1-10', '10.1-15', '15.1-20', '>=20.1'),
    on('loam', '<=7.5', '7.6-12.5', '12.6-20', '20.1-25', '>=25.1'),
    on('clay', '<=10', '10.1-15', '15.1-25', '25.1-30', '>=30.1'),
    on('peat', '<=30', '31-60', '61-90', '91-120', '>=121'),
  ]);
});
