/** The commands that share nearly all their code: one file to load, since each file costs Node more than what it holds. */
export { give } from './answer.ts';
export { batch } from './batch.ts';
export { blendCommand } from './blend.ts';
export { checkCommand } from './check.ts';
export { diaryCommand } from './diary.ts';
export { hereCommand } from './here.ts';
export { newCommand } from './new.ts';
export { pageCommand } from './page.ts';
export { phCommand } from './ph.ts';
export { planCommand } from './plan.ts';
export { readCommand } from './read.ts';
export { sheetCommand } from './sheet.ts';
export { shopCommand } from './shop.ts';
export { speak } from './speak.ts';
export { weighCommand } from './weigh.ts';
export { whyCommand } from './why.ts';
export { yearsCommand } from './years.ts';
