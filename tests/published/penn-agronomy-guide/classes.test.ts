// Penn State Agronomy Guide, field crops, Mehlich-3, ppm. The figures are memory (typed a second time from notes); the
// words below optimum, optimum and above optimum were read in notes of the guide.
import { expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'penn-agronomy-guide', title: 'Agronomy Guide, table 1.2-4', publisher: 'Penn State', url: 'http://extension.psu.edu/agronomy-guide/cm/sec2/sec24d', mark: 'memory' } as const;
const where = 'Pennsylvania, US';

published(source, () => {
  expectClasses([
    { where, item: 'phosphorus', line: 'Phosphorus # ppm Mehlich 3', classes: words(['<30', 'low'], ['31-50', 'optimum'], ['>50', 'high']) },
    { where, item: 'potassium', line: 'Potassium # ppm Mehlich 3', classes: words(['<100', 'low'], ['101-200', 'optimum'], ['>200', 'high']) },
    { where, item: 'magnesium', line: 'Magnesium # ppm Mehlich 3', classes: words(['<60', 'low'], ['61-120', 'optimum'], ['>120', 'high']) },
  ]);
});
