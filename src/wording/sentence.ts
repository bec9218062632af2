/** First letter large, for a sentence that opens with a person's own label. */
export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
