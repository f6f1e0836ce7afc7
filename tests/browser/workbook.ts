import { strToU8, zipSync } from 'fflate';

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const links = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packaged = 'http://schemas.openxmlformats.org/package/2006';

/** The least that makes a workbook of one sheet (Office Open XML, ECMA-376, from memory): numbers and texts. */
export function workbook(rows: readonly (readonly string[])[]): Buffer {
  const cell = (text: string, place: string): string =>
    text === '' || Number.isNaN(Number(text))
      ? `<c r="${place}" t="inlineStr"><is><t>${escaped(text)}</t></is></c>`
      : `<c r="${place}"><v>${text}</v></c>`;
  const row = (cells: readonly string[], below: number): string =>
    `<row r="${below + 1}">${cells.map((text, i) => cell(text, `${'ABCDEFGH'[i]}${below + 1}`)).join('')}</row>`;
  const sheet = rows.map(row).join('');
  const files = {
    '[Content_Types].xml':
      `<Types xmlns="${packaged}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
      '<Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>' +
      '<Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>',
    '_rels/.rels': `<Relationships xmlns="${packaged}/relationships"><Relationship Id="r1" Type="${links}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `<workbook xmlns="${main}" xmlns:r="${links}"><sheets><sheet name="log" sheetId="1" r:id="r1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${packaged}/relationships"><Relationship Id="r1" Type="${links}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    'xl/worksheets/sheet1.xml': `<worksheet xmlns="${main}"><sheetData>${sheet}</sheetData></worksheet>`,
  };
  const bytes = Object.entries(files).map(([name, text]) => [
    name,
    strToU8(`<?xml version="1.0" encoding="UTF-8"?>${text}`),
  ]);
  return Buffer.from(zipSync(Object.fromEntries(bytes)));
}

const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
