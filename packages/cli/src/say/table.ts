import CliTable from 'cli-table3';

const none = {
  top: '',
  'top-mid': '',
  'top-left': '',
  'top-right': '',
  bottom: '',
  'bottom-mid': '',
  'bottom-left': '',
  'bottom-right': '',
  left: '',
  'left-mid': '',
  mid: '',
  'mid-mid': '',
  right: '',
  'right-mid': '',
  middle: '  ',
};

/**
 * Rows in columns, without lines; the first row is the head.
 *
 * @param indent leads every line
 */
export function table(rows: readonly (readonly string[])[], indent = ''): string {
  const drawn = new CliTable({ chars: none, style: { 'padding-left': 0, 'padding-right': 0, head: [], border: [] } });
  for (const row of rows) drawn.push([...row]);
  return drawn
    .toString()
    .split('\n')
    .map((line) => `${indent}${line}`.trimEnd())
    .join('\n');
}
