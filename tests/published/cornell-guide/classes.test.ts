// Cornell Guide, phosphorus by Morgan, pounds an acre. Memory; typed a second time from notes.
import { expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'cornell-guide', title: 'Cornell Guide for Integrated Field Crop Management', publisher: 'Cornell University', url: null, mark: 'memory' } as const;

published(source, () => {
  expectClasses([
    { where: 'New York, US', item: 'phosphorus', line: 'Phosphorus # lb/acre Morgan', classes: words(['<1', 'very-low'], ['1-3', 'low'], ['4-8', 'medium'], ['9-39', 'high'], ['>=40', 'very-high']) },
  ]);
});
