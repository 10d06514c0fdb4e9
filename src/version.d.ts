declare const MEDLAR_VERSION: string;
