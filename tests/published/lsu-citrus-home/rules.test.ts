// LSU AgCenter, "Horticulture Hints (citrus fertilization)" (2022). The figures were typed a second time, from a stored text of the page.
import { LB, expectFigures, published } from '../helpers.ts';

const source = {
  id: 'lsu-citrus-home',
  title: 'Horticulture Hints (citrus fertilization)',
  publisher: 'LSU AgCenter',
  url: 'https://lsuagcenter.com/articles/page1649791105807',
  mark: 'read',
} as const;

/** So many pounds of 8-8-8 or of 13-13-13: the page names both. */
function bag(pounds: number): number[] {
  return [pounds * 0.08 * LB, pounds * 0.13 * LB];
}

/** And in summer, a year of age: 1/4 lb of ammonium nitrate or sulphate, or 1/2 lb of calcium nitrate. */
function withSummer(pounds: number, years: number): number[] {
  const summer = [0.25 * 0.34, 0.25 * 0.21, 0.5 * 0.155].map((each) => each * years * LB);
  return bag(pounds).flatMap((spring) => summer.map((more) => spring + more));
}

published(source, () => {
  // Newly planted: half a pound of 8-8-8 or 13-13-13.
  expectFigures(source.id, [
    ['satsuma, planted 2026, shoots 1 in', [bag(0.5)], { where: 'Louisiana, US' }],
  ]);

  // 1 to 1 1/2 lb a year of age; a tree one year old gets 1 to 1 1/2 lb.
  expectFigures(source.id, [
    ['satsuma, planted 2025, not bearing, shoots 1 in', [bag(1), bag(1.5)], { where: 'Louisiana, US' }],
    ['orange, planted 2023, not bearing, shoots 1 in', [bag(3), bag(4.5)], { where: 'Louisiana, US' }],
  ]);

  // Four years and over: the summer nitrogen comes on top.
  expectFigures(source.id, [
    ['orange, planted 2022, bearing, shoots 1 in', [withSummer(4, 4), withSummer(6, 4)], { where: 'Louisiana, US' }],
    ['lemon, planted 2021, bearing, shoots 1 in', [withSummer(5, 5), withSummer(7.5, 5)], { where: 'Louisiana, US' }],
  ]);

  // Twelve years and over: 12 to 18 lb.
  expectFigures(source.id, [
    ['satsuma, planted 2000, bearing, shoots 1 in', [withSummer(12, 12), withSummer(18, 12)], { where: 'Louisiana, US' }],
  ]);
});
