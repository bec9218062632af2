import { SIZES } from '../sizes.ts';

/** One function a kind of block, in Typst. Texts are strings throughout: none is read as markup. */
export const blocksTemplate = String.raw`
#let width-of(w) = if w == "auto" { auto } else if "mm" in w { w.mm * 1mm } else { w.share * 1fr }

// Rules for one element each: a rule for the whole document is tried on every cell of its tables.
#let heading-block(level, body, ..look) = {
  show heading: set par(leading: .45em)
  show heading: it => {
    if level == 1 { block(below: .9em, text(size: 1.95em, weight: 600, it.body)) }
    else if level == 2 { block(above: 1.7 * gap, below: .8em, sticky: true, text(size: 1.22em, weight: 600, it.body)) }
    else { block(above: gap, below: .5em, sticky: true, small(weight: 700, it.body)) }
  }
  heading(level: level, ..look, body)
}

#let text-block(b) = {
  let t = b.text
  if b.style == "question" { block(above: 0pt, below: 1em, par(leading: .5em, text(size: 1.2em, style: "italic", t))) }
  else if b.style == "lead" { par(text(size: 1.12em, t)) }
  else if b.style == "label" { par(small(t)) }
  else if b.style == "strong" { block(above: .9em, below: .45em, sticky: true, small(weight: 700, t)) }
  else if b.style == "soft" { par(small(fill: soft-ink, t)) }
  else if b.style == "huge" { par(text(font: sans, size: 1.9em, weight: 700, t)) }
  else { par(t) }
}

#let facts-block(b) = small({
  set terms(separator: [ ], hanging-indent: 0pt, spacing: .65em, tight: false)
  terms(..b.facts.map(f => terms.item(f.name, f.values.join([; ]))))
})

#let finding-block(b) = block(breakable: false, above: 1.1 * gap, below: 1.1 * gap, {
  block(below: .55em, {
    box(baseline: 22%, pdf.artifact(picture(b.mark, none, height: 1.35em)))
    h(.5em)
    small(weight: 700, b.words)
    if b.name != none { h(.8em); small(fill: soft-ink, b.name) }
  })
  block(above: 0pt, par(if b.lead { text(size: 1.12em, b.sentence) } else { b.sentence }))
})

// What stands first in a column, box or label starts at its upper edge.
#let stack-of(parts) = { for part in parts { part } }

// Of a cell with several lines the first is what one looks for.
#let cell(c) = if c == "" { [] } else {
  let lines = c.split("\n")
  if lines.len() == 1 { c } else { text(size: 1.5em, weight: 700, lines.at(0)); linebreak(); lines.slice(1).join(linebreak()) }
}

// Boxes as wide as one another, to be written into: one cell with its lines drawn, as each by itself has nothing to say.
#let empty-boxes(count) = table.cell(colspan: count, inset: 0pt, pdf.artifact(curve(
  stroke: hairline,
  ..range(1, count).map(at => (curve.move((at / count * 100%, 0pt)), curve.line((at / count * 100%, 100%)))).flatten(),
)))

#let line-height = ${SIZES.smallCapital * SIZES.small} * base + ${2 * SIZES.cell.y}pt

#let table-block(b) = {
  let boxed = b.rules == "boxes"
  let sides = range(b.head.len()).map(x => if x in b.figures { right } else { left })
  let head = b.head.zip(sides).map(((h, side)) => table.cell(align: side + top, text(weight: 700, h)))
  let row-of(cells) = cells.map(cell) + if cells.len() < head.len() { (empty-boxes(head.len() - cells.len()),) }
  let body = table(
    columns: b.widths.map(width-of),
    rows: (auto,) + if b.row-height > 0 { (b.row-height * 1mm,) } else { b.one-line.map(one => if one { line-height } else { auto }) },
    align: sides.map(side => side + if boxed { horizon } else { top }),
    stroke: if boxed { hairline } else { (bottom: hairline) },
    table.header(..(if not boxed { (table.hline(stroke: hairline),) }), ..head),
    ..b.rows.map(row-of).flatten(),
  )
  let body = small(body, number-width: "tabular")
  if b.caption == none { block(above: gap, below: gap, body) }
  else {
    show figure: set align(left)
    show figure: set block(breakable: true, above: 1.3 * gap, below: 1.3 * gap)
    show figure.caption: it => block(below: .2em, sticky: true, par(small(weight: 700, it.body)))
    figure(body, kind: table, supplement: none, numbering: none, caption: figure.caption(position: top, b.caption))
  }
}

#let figure-block(b) = {
  show figure: set align(left)
  show figure: set block(breakable: false, above: 1.3 * gap, below: 1.3 * gap)
  show figure.caption: it => small(fill: soft-ink, it.body)
  if b.title != none { block(above: gap, below: .5em, sticky: true, small(weight: 700, b.title)) }
  figure(
    layout(size => {
      let width = if b.width == none { size.width } else { calc.min(b.width * 1mm, size.width) }
      picture(b.picture, b.alt, width: calc.min(width, b.tallest * 1mm / doc.shapes.at(b.picture)))
    }),
    alt: b.alt, kind: image, supplement: none, numbering: none,
    caption: if b.caption == none { none } else { figure.caption(position: bottom, b.caption) },
  )
}

#let render(b) = {
  if b.kind == "title" { heading-block(1, outlined: false, b.text) }
  else if b.kind == "heading" { heading-block(b.level, b.text) }
  else if b.kind == "text" { text-block(b) }
  else if b.kind == "items" { list(..b.items) }
  else if b.kind == "facts" { facts-block(b) }
  else if b.kind == "finding" { finding-block(b) }
  else if b.kind == "table" { table-block(b) }
  else if b.kind == "figure" { figure-block(b) }
  else if b.kind == "page" { pagebreak(weak: true) }
  else if b.kind == "bottom" { v(1fr, weak: true) }
  else if b.kind == "contents" {
    show outline.entry: it => block(above: .6em, link(it.element.location(), it.indented(it.prefix(), it.inner())))
    outline(title: none, depth: b.level, indent: 0pt)
  }
  else if b.kind == "spread" {
    block(above: 1.6 * gap, below: gap, grid(
      columns: (1fr, ${SIZES.beside}mm),
      column-gutter: ${SIZES.gutter}mm,
      stack-of(b.main.map(render)),
      grid.cell(stroke: (left: hairline), inset: (left: ${SIZES.inset}mm), stack-of(b.beside.map(render))),
    ))
  }
  else if b.kind == "columns" {
    let first = if b.first == none { 1fr } else { b.first * 1mm }
    block(above: gap, below: gap, grid(
      columns: (first,) + (1fr,) * (b.columns.len() - 1),
      column-gutter: ${SIZES.gutter}mm,
      ..b.columns.map(column => stack-of(column.map(render))),
    ))
  }
  else if b.kind == "box" {
    block(width: 100%, breakable: not b.whole, stroke: hairline, inset: ${SIZES.inset}mm, above: gap, below: gap, {
      for inner in b.blocks { render(inner) }
    })
  }
  else if b.kind == "labels" {
    grid(
      columns: (1fr,) * b.columns,
      rows: b.height * 1mm,
      stroke: (paint: rgb("#7d817a"), thickness: .4pt, dash: "dashed"),
      inset: 2.5mm,
      ..b.labels.map(one => { for inner in one { render(inner) } }),
    )
  }
}

#for b in doc.blocks { render(b) }
`;
