/** Text as it stands in HTML and SVG, between tags or in an attribute. */
export const escaped = (text: string): string => text.replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);
