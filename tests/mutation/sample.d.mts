export declare function isSampled(id: string): boolean;
