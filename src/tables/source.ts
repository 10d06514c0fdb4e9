/** A publication that figures are taken from. The address is the publisher's own; where only a copy was read, the figure's own mark and the `note` say so. */
export type Source = {
  readonly title: string;
  readonly publisher: string;
  readonly year?: number;
  readonly url?: string;
  readonly note?: 'read in a copy' | 'weak page' | 'recalled';
};
