export declare function licences(): string;
export declare function shipped(): string[];
