/**
 * Rows as CSV after RFC 4180: commas, quotes where a cell needs them, CR LF at each line's end. A cell
 * that a spreadsheet would take for a formula has an apostrophe set before it.
 *
 * @param rows  texts and plain figures, each in the unit its column's head names [any]
 */
export const writeCsv = (rows: readonly (readonly (string | number)[])[]): string =>
  rows.map((row) => `${row.map(cell).join(",")}\r\n`).join("");

function cell(content: string | number): string {
  const text = typeof content === "string" ? harmless(content) : String(content);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

const harmless = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);
