/** What the files in a grower's folder are called. */
export const ORCHARD_FILE = 'orchard.yaml';
export const RULES_FILE = 'rules.yaml';
export const DIARY_FILE = 'diary.csv';
