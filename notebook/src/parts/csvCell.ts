/**
 * A cell of CSV (RFC 4180): numbers as they are, texts quoted where they must be and never a formula. Texts can come
 * from a log or a site file, and spreadsheets run a cell that begins like a formula: such a cell is led by an
 * apostrophe, which makes it text.
 */
export function csvCell(value: string | number | boolean): string {
  if (typeof value !== 'string') return String(value);
  const harmless = /^[=+\-@\t\r\n＝＋－＠]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replace(/"/g, '""')}"` : harmless;
}
