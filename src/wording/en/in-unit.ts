/** A number's text with its unit: "3 mm", "1.2 days", "1 day", "less than 1 point". The unit carries its own blank. */
export const inUnit = (text: string, unit: string): string =>
  / (days|points|years|months)$/.test(unit) && /(^| )1$/.test(text) ? `${text}${unit.slice(0, -1)}` : `${text}${unit}`;
