/*
 * The look of the printed record. Sizes are those of paper, margins suit both A4 and Letter, page numbers come from the
 * printer's own margin boxes. Black on white: a record is copied and faxed.
 */

/** Style sheet of the record. */
export const recordStyle = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
html { background: #eee; }
body { font: 9.5pt/1.4 system-ui, "Segoe UI", "Liberation Sans", Arial, sans-serif; color: #111; background: #fff;
  max-width: 190mm; margin: 0 auto; padding: 10mm 12mm; }
h1 { font-size: 18pt; line-height: 1.15; margin: 0 0 1mm; }
h2 { font-size: 13pt; margin: 6mm 0 2mm; border-bottom: 0.6pt solid #111; padding-bottom: 0.6mm; break-after: avoid; }
h3 { font-size: 10.5pt; margin: 4mm 0 1mm; break-after: avoid; }
p:has(+ figure), p:has(+ svg), p:has(+ ul), p:has(+ table), p:has(+ .whole) { break-after: avoid; }
p { margin: 0 0 2mm; }
ul, ol { margin: 0 0 2mm; padding-left: 5.5mm; }
li { margin-bottom: 0.8mm; }
.lead { color: #444; }
.state { font-weight: 700; }
.box { border: 0.8pt solid #111; padding: 2.5mm 3.5mm; margin: 3mm 0; break-inside: avoid; }
.box > :last-child, .box ul > :last-child { margin-bottom: 0; }
.box h3 { margin-top: 0; }
.plain { border-color: #999; break-inside: auto; box-decoration-break: clone; -webkit-box-decoration-break: clone; }
.plain li { break-inside: avoid; }
.missing { font-style: italic; color: #555; }
table { border-collapse: collapse; width: 100%; margin: 1mm 0 3mm; font-variant-numeric: tabular-nums; }
th, td { text-align: left; vertical-align: top; padding: 0.9mm 2.5mm 0.9mm 0; border-bottom: 0.4pt solid #bbb; }
th { font-weight: 600; }
thead th { border-bottom: 0.8pt solid #111; }
thead { display: table-header-group; }
tr, .whole { break-inside: avoid; }
.facts { columns: 2; column-gap: 8mm; margin: 1mm 0 3mm; break-inside: avoid; }
.facts > div { break-inside: avoid; display: flex; justify-content: space-between; gap: 3mm; border-bottom: 0.4pt solid #bbb;
  padding: 0.8mm 0; }
.facts dt { color: #444; }
.facts dd { margin: 0; text-align: right; }
td .noted { white-space: nowrap; }
.number { cursor: help; text-decoration: underline dotted #999; text-underline-offset: 2px; }
.note { font-size: 7pt; line-height: 0; }
.note a { color: #333; text-decoration: none; }
.notes { font-size: 8.5pt; }
svg { display: block; width: 100%; height: auto; margin: 1mm 0 2mm; break-inside: avoid; }
svg.map { max-width: 80mm; }
figure { margin: 0; break-inside: avoid; }
h3 .note { font-weight: 400; }
.sign { display: grid; grid-template-columns: 1fr 1fr; gap: 12mm 10mm; margin-top: 12mm; break-inside: avoid; }
.sign div { border-top: 0.8pt solid #111; padding-top: 1mm; font-size: 8.5pt; }
@media screen and (max-width: 640px) {
  body { padding: 5mm 4mm; }
  .facts { columns: 1; }
  .sign { grid-template-columns: 1fr; }
  th, td { padding-right: 1.5mm; overflow-wrap: break-word; }
  .written { overflow-wrap: anywhere; }
  td .noted { white-space: normal; }
}
@media screen and (max-width: 380px) {
  td { overflow-wrap: anywhere; }
}
@page { margin: 16mm 14mm 18mm; @bottom-left { content: "Commissioning record, made with beamkeep"; font: 8pt sans-serif; color: #444; }
  @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt sans-serif; color: #444; } }
@media print {
  html { background: #fff; }
  body { max-width: none; margin: 0; padding: 0; }
  .beam ~ .beam { break-before: page; }
  .number { text-decoration: none; }
  .facts .noted { white-space: nowrap; }
}
`;
