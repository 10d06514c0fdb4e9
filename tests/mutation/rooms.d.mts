export interface Room {
  readonly least: number;
  readonly tests: readonly string[];
}
export declare const ROOMS: Readonly<Record<string, Room>>;
export declare function folderOf(room: string): string;
