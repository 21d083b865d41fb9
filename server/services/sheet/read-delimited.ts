import { CsvError } from 'csv-parse';
import { parse } from 'csv-parse/sync';
import { SHEET_LIMITS, SheetProblem, checkSize } from './sheet-limits.ts';

const DELIMITERS = [',', '\t', ';'] as const;
type Delimiter = (typeof DELIMITERS)[number];

const LOOKED_AT_LINES = 50;

/** Rows of RFC 4180 text, more leniently: comma, tab or semicolon; any line end; ragged rows; inch marks inside a cell. */
export function readDelimited(text: string): string[][] {
  const stated = /^sep=([,;\t])(?:\r\n|\n|\r)/iu.exec(text);
  const body = stated ? text.slice(stated[0].length) : text;
  const rows = parseRows(body, stated ? (stated[1] as Delimiter) : guessDelimiter(body));
  checkSize(rows);
  return rows.map((row) => row.map((cell) => cell.replace(/\r\n?/gu, '\n')));
}

function parseRows(text: string, delimiter: Delimiter): string[][] {
  try {
    return parse(text, {
      delimiter,
      record_delimiter: ['\r\n', '\n', '\r'],
      relax_column_count: true,
      relax_quotes: true,
      skip_empty_lines: false,
      to: SHEET_LIMITS.rows + 1,
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    if (error.code !== 'CSV_QUOTE_NOT_CLOSED') throw new SheetProblem('damaged');
    throw new SheetProblem('open-quote', { line: Number(error['records']) + 1 });
  }
}

/** The sign that stands outside quotes in most of the first lines, then most often; the comma where none does. */
function guessDelimiter(text: string): Delimiter {
  const lines = text
    .slice(0, 100_000)
    .replace(/"(?:[^"]|"")*"/gu, '')
    .split(/\r\n|\n|\r/u, LOOKED_AT_LINES);
  const scores = DELIMITERS.map((delimiter) => {
    const counts = lines.map((line) => line.split(delimiter).length - 1);
    return {
      delimiter,
      lines: counts.filter((count) => count > 0).length,
      total: counts.reduce((a, b) => a + b, 0),
    };
  });
  return scores.reduce((best, next) =>
    next.lines > best.lines || (next.lines === best.lines && next.total > best.total) ? next : best,
  ).delimiter;
}
