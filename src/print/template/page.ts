import { SIZES } from '../sizes.ts';

const { margin, text, gap, leading, small, cell } = SIZES;

/** The sheet of paper and the look of its text, in Typst. Reads the document as data: `doc`. */
export const pageTemplate = String.raw`
#let doc = json(bytes(sys.inputs.doc))
#let base = (roomy: ${text.roomy}pt, close: ${text.close}pt, tight: ${text.tight}pt).at(doc.density)
#let gap = (roomy: ${gap.roomy}em, close: ${gap.close}em, tight: ${gap.tight}em).at(doc.density)
#let ink = rgb("#1d2427")
#let soft-ink = rgb("#4d5553")
#let hairline = .5pt + rgb("#7d817a")
#let others = ("Noto Sans Hebrew", "Noto Sans Arabic")
#let serif = ("Source Serif 4", "Atkinson Hyperlegible Next") + others
#let sans = ("Atkinson Hyperlegible Next", "Source Serif 4") + others

// Without kerning, which nobody sees at this size: with it Typst takes twice as long to break the lines of this face.
#let small(body, ..look) = text(font: sans, kerning: false, size: ${small}em, ..look, body)
#let running(body) = text(font: sans, kerning: false, size: 8pt, fill: soft-ink, body)
#let picture(name, alt, ..size) = image(bytes(doc.pictures.at(name)), format: "svg", alt: alt, ..size)

#set document(
  title: doc.title,
  author: doc.authors,
  date: if doc.date == none { none } else { datetime(year: doc.date.at(0), month: doc.date.at(1), day: doc.date.at(2)) },
)
#set text(
  font: serif, fallback: false, size: base, fill: ink, number-type: "lining",
  lang: doc.language.at(0), region: doc.language.at(1), hyphenate: false,
)
#set par(leading: ${leading}em, spacing: gap, justify: false)
#set list(indent: 0pt, body-indent: .5em, spacing: .55em, marker: [–])
#set table(stroke: none, inset: (x: ${cell.x}pt, y: ${cell.y}pt))
#set grid(gutter: 0pt)
#set figure(gap: .5em)
#set page(
  paper: if doc.paper == "letter" { "us-letter" } else { "a4" },
  flipped: doc.turned,
  margin: (x: ${margin.x}mm, top: ${margin.top}mm, bottom: ${margin.bottom}mm),
  header-ascent: 35%,
  footer-descent: 35%,
  header: block(width: 100%, stroke: (bottom: hairline), inset: (bottom: 1.2mm), running(
    grid(columns: (1fr, auto), column-gutter: 1em, doc.head.at(0), doc.head.at(1)),
  )),
  footer: context running(grid(
    columns: (1fr, auto),
    column-gutter: 1em,
    doc.foot,
    doc.page-of.at(0) + counter(page).display() + doc.page-of.at(1) + str(counter(page).final().at(0)) + doc.page-of.at(2),
  )),
)
`;
