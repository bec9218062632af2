import type { Problem } from './problem.ts';

/**
 * A problem as commands and the site print it: `file:line:column field: message`, below it the level
 * and the remedy. Letters that could steer a terminal are taken out.
 */
export function problemText({ file, line, column, field, level, message, remedy }: Problem): string {
  const place = [file, line, column].filter((part) => part !== null).join(':');
  return printable(`${place}${field === null ? '' : ` ${field}`}: ${message}\n  ${level}: ${remedy}`);
}

function printable(text: string): string {
  return text.replace(/[^\P{Cc}\n]|[\u202A-\u202E\u2066-\u2069]/gu, '\uFFFD');
}
