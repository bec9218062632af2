/** An element of the page by its id. */
export function at<Kind extends HTMLElement = HTMLElement>(id: string): Kind {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`The page has no element "${id}".`);
  return element as Kind;
}

/** A new element with text in it; text is never read as HTML. */
export function made<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  text = '',
  attributes: Readonly<Record<string, string>> = {},
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  element.textContent = text;
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
}
