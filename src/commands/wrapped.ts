/** Text broken at blanks into lines of at most `width` characters; a longer word stands alone. */
export function wrapped(text: string, width: number): string {
  const lines = [''];
  for (const word of text.split(' ')) {
    const line = lines.at(-1) ?? '';
    const longer = line === '' ? word : `${line} ${word}`;
    if (longer.length <= width || line === '') lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.join('\n');
}
