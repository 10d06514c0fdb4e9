// "Soil Essentials: Managing Your Farm's Primary Asset", conductivity of a 1:5 extract: below 0.16 dS/m harmless. Typed a
// second time from notes of a copy (proves typing). What more than that does depends on the soil and is not tried.
import { expectClasses } from '../classes.ts';
import { published } from '../helpers.ts';

const source = {
  id: 'australia-salts', title: 'Soil Essentials: Managing Your Farm\'s Primary Asset', publisher: 'CSIRO Publishing',
  url: 'http://what-when-how.com/Tutorial/topic-topic-1483loe/Soil-Essentials-Managing-Your-Farms-Primary-Asset-156.html', mark: 'read',
} as const;

published(source, () => {
  expectClasses([{ item: 'salts', line: 'EC 1:5 # dS/m', classes: [['<0.16', null, 'at']] }]);
});
