/**
 * Shows the choices in place of the links and narrows the list down to the trials that fit every choice. Choices stand in
 * the address (`?crop=leek&year=2026`), so that a narrowed list can be linked to and comes back with the page.
 */
export function combineFacets(page: Document): void {
  const choices = page.querySelector<HTMLElement>('#choices');
  const status = choices?.querySelector<HTMLElement>('[role=status]');
  if (!choices || !status) return;
  const selects = [...choices.querySelectorAll('select')];
  const entries = [...page.querySelectorAll<HTMLElement>('#entries > li')];
  const asked = new URLSearchParams(location.search);
  for (const select of selects) choose(select, asked.get(select.name) ?? '');
  page.querySelector('#facets')?.setAttribute('hidden', '');
  choices.hidden = false;

  const apply = () => {
    const chosen = selects.flatMap(({ name, value }) => (value ? [`${name}/${value}`] : []));
    let shown = 0;
    for (const entry of entries) {
      const under = entry.dataset.under?.split(' ') ?? [];
      entry.hidden = !chosen.every((choice) => under.includes(choice));
      if (!entry.hidden) shown += 1;
    }
    status.textContent =
      shown === 0
        ? (status.dataset.none ?? '')
        : (status.dataset.shown ?? '').replace('{shown}', `${shown}`).replace('{all}', `${entries.length}`);
  };
  const keep = () => {
    const query = selects.flatMap(({ name, value }) => (value ? [[name, value]] : []));
    history.replaceState(null, '', query.length > 0 ? `?${new URLSearchParams(query)}` : location.pathname);
    apply();
  };
  choices.addEventListener('change', keep);
  choices.querySelector('button')?.addEventListener('click', () => {
    for (const select of selects) choose(select, '');
    keep();
  });
  apply();
}

/** A value that is no choice, from a mistyped or old address, counts as "any". */
function choose(select: HTMLSelectElement, value: string): void {
  select.value = value;
  if (select.selectedIndex < 0) select.selectedIndex = 0;
}
