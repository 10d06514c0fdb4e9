// Alabama Cooperative Extension, choosing liming materials, lime by texture alone: ton/acre that raise
// pH 5.0 to 6.5 on a sandy soil and on a clay. Typed from research notes of the page (read).
import { published } from '../helpers.ts';
import { expectPrinted } from '../ph.ts';

const source = {
  id: 'alabama-texture',
  title: 'Choosing Effective Liming Materials',
  publisher: 'Alabama Cooperative Extension',
  url: 'https://www.aces.edu/blog/topics/crop-production/choosing-effective-liming-materials/',
  mark: 'read',
} as const;

const flags = { where: 'Alabama, US', now: 5.0, goal: 6.5 };

published(source, () => {
  expectPrinted(source.id, 'ton/acre', [
    [{ ...flags, texture: 'sand' }, 1],
    [{ ...flags, texture: 'clay' }, 4],
  ]);
});
