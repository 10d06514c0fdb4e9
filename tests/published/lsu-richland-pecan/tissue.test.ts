// LSU AgCenter, Richland Parish, "Pecan fertilization", and University of Georgia, Colquitt County, on young trees: growth wanted in a year.
import { expectTissue, published } from '../helpers.ts';

published({ id: 'lsu-richland-pecan', title: 'Pecan fertilization', publisher: 'LSU AgCenter, Richland Parish', url: null, mark: 'read' }, () => {
  expectTissue('lsu-richland-pecan', { growth: [['pecan', 'bearing', 8, 12, 'in']] });
  expectTissue('uga-colquitt-pecan', { growth: [['pecan', 'not bearing', 24, 48, 'in']] });
});
