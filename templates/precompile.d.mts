export declare function precompiled(path: string): string;
