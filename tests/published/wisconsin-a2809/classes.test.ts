// University of Wisconsin, A2809, demand level 2 (stone fruit among them), Bray-1, ppm. Memory; typed a second time from
// notes, which give low, optimum and high alone. (A trader's two pages print the same figures without their source.)
import { type Class, expectClasses, words } from '../classes.ts';
import { published } from '../helpers.ts';

const source = { id: 'wisconsin-a2809', title: 'A2809, Nutrient Application Guidelines', publisher: 'University of Wisconsin-Madison Extension', url: null, mark: 'memory' } as const;

const on = (texture: string, item: string, line: string, low: string, optimum: string, high: string) => ({
  where: 'Wisconsin, US', tree: 'plum, planted 2015, 4 m across', beside: `Texture: ${texture}`, item, line, classes: words([low, 'low'], [optimum, 'optimum'], [high, 'high']) satisfies Class[],
});

published(source, () => {
  expectClasses([
    on('loam', 'phosphorus', 'Phosphorus # ppm Bray-1', '12-17', '18-25', '26-35'),
    on('silt loam', 'phosphorus', 'Phosphorus # ppm Bray-1', '12-17', '18-25', '26-35'),
    on('sand', 'phosphorus', 'Phosphorus # ppm Bray-1', '18-25', '26-37', '38-55'),
    on('peat', 'phosphorus', 'Phosphorus # ppm Bray-1', '18-25', '26-37', '38-55'),
    on('loam', 'potassium', 'Potassium # ppm Bray-1', '90-110', '111-140', '141-170'),
    on('sand', 'potassium', 'Potassium # ppm Bray-1', '50-80', '81-120', '121-160'),
    on('peat', 'potassium', 'Potassium # ppm Bray-1', '50-80', '81-120', '121-160'),
  ]);
});
