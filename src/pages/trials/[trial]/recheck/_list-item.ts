/** An element with a text and nothing else, so that no text can become markup. */
export function listItem(text: string, name: 'li' | 'p' | 'span' = 'li'): HTMLElement {
  const element = document.createElement(name);
  element.textContent = text;
  return element;
}
