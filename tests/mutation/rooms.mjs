/**
 * The rooms that mutants are planted in, the least share of them that the tests must kill, and the tests that exercise each:
 * no others, the quick and telling ones first. A name is where a test's path begins (`*` any one folder), and the longest that fits says when it comes; `!` leaves out.
 * `tables` and `words` are data, held by tests/published and tests/words; the doors (`cli`, `page`) are left out.
 */
const published = (...kinds) => kinds.map((kind) => `tests/published/*/${kind}`);

export const ROOMS = {
  need: {
    least: 90,
    tests: ['tests/need/edges', 'tests/need/edges-rules', 'tests/published/worked-needs/needs', 'tests/published/deciding-by-hand/', 'tests/need/', ...published('practice', 'potash', 'phosphate-potash', 'rings', 'tub', 'nitrogen', 'rules'),
      'tests/when/windows', 'tests/orchard/release-diary', 'tests/need/own-rules', 'tests/need/rules', 'tests/need/uncertain'],
  },
  ph: {
    least: 90,
    tests: ['tests/ph/edges', 'tests/ph/suits', 'tests/ph/acidifiers', 'tests/soil-units/lime-counted', ...published('sulphur', 'ranges', 'lime'), 'tests/ph/', 'tests/ph/lime-methods', 'tests/ph/ph.properties'],
  },
  bags: {
    least: 90,
    // The comparison with another solver takes its time and tells of no fault that allot does not.
    tests: ['tests/bags/edges', 'tests/bags/round', 'tests/bags/dilute', ...published('blend', 'weigh', 'shop', 'products', 'orchard', 'practice'), 'tests/bags/', 'tests/ph/feed-acidity', 'tests/bags/shop', 'tests/bags/allot', '!tests/bags/glpk'],
  },
  rating: {
    least: 90,
    tests: ['tests/rating-units/', 'tests/texture/', 'tests/rating-sense/', 'tests/rating/', ...published('ratings', 'readings', 'sample', 'contents', 'units', 'salts', 'classes')],
  },
  soil: {
    least: 90,
    // Minutes of long texts, which must end in time, and hundreds of made reports a property.
    tests: ['tests/soil-units/edges', 'tests/soil-units/', 'tests/reports/', 'tests/tables/', 'tests/generated/', ...published('readings', 'sample', 'contents', 'units'), 'tests/soil/', 'tests/hostile/reports',
      '!tests/soil/any-text', '!tests/soil/reader-properties', '!tests/hostile/reports-signs'],
  },
  units: { least: 80, tests: ['tests/units/', 'tests/rating-units/', ...published('densities', 'weigh')] },
  reason: { least: 80, tests: ['tests/reason/', 'tests/rating-units/', 'tests/need/lead', 'tests/orchard/sentence', 'tests/cli/answers', 'tests/cli/usage', 'tests/words/'] },
  when: { least: 80, tests: ['tests/when/edges', 'tests/when/season', 'tests/when/windows', ...published('practice', 'orchard'), 'tests/plan/', 'tests/when/mirror'] },
  orchard: {
    least: 80,
    tests: ['tests/orchard/edges', 'tests/orchard/sentence', 'tests/orchard/bag-labels', 'tests/orchard/', 'tests/bags/labels', 'tests/ph/lime-labels', 'tests/need/own-rules', ...published('examples', 'grades', 'densities', 'release', 'mixing'), 'tests/cli/new', 'tests/hostile/orchards', 'tests/orchard/any-line'],
  },
  // Another language stays loaded, which tests/words must not find.
  sheet: { least: 80, tests: ['tests/sheet/', 'tests/cli/calendar', 'tests/cli/years', 'tests/hostile/sheets', 'tests/hostile/injection', 'tests/words/', 'tests/sheet/edges-marks'] },
  json: { least: 80, tests: ['tests/json/', 'tests/rating/read', 'tests/bags/labels', 'tests/orchard/shape', 'tests/cli/answers', 'tests/cli/usage', 'tests/ph/curve', 'tests/bags/weigh'] },
  src: {
    least: 80,
    tests: ['tests/plan/edges', 'tests/plan/', 'tests/published/deciding-by-hand/', 'tests/need/lead', 'tests/need/credits', 'tests/need/beds', 'tests/when/windows', 'tests/orchard/', 'tests/need/', 'tests/bags/bans', 'tests/bags/choose', 'tests/cli/years', 'tests/cli/answers', 'tests/need/uncertain', '!tests/orchard/any-line'],
  },
};

/** The files of a room: of its folder, or those that stand in src itself. */
export const folderOf = (room) => (room === 'src' ? 'src' : `src/${room}`);
