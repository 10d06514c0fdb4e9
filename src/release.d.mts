type Facts = {
  readonly manifest: { readonly version: string; readonly repository?: string | { readonly url?: string } };
  readonly lock: { readonly version?: string; readonly packages?: Readonly<Record<string, { readonly version?: string }>> };
  readonly changelog: string;
  readonly changed: string;
  readonly branch: string;
  readonly env: Readonly<Record<string, string | undefined>>;
};
export declare function missing(facts: Facts): string[];
export declare function vouches(env: Facts['env']): boolean;
export declare function wrongFiles(files: readonly string[]): string[];
