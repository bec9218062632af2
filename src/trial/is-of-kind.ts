/** Genus alone or genus and species: "Allium" and "Allium porrum" both match "Allium porrum var. ...". */
export const isOfKind = (species: string, name: string): boolean =>
  ` ${species.toLowerCase().replace(/\s+/g, ' ').trim()} `.startsWith(` ${name.toLowerCase()} `);
