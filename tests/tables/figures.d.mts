export const FILE: string;
export function figures(): Promise<string>;
