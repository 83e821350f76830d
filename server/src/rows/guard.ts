/**
 * A text as it stands in a table that a spreadsheet opens: one that would be taken for a formula has an apostrophe before it, as has one
 * that begins with an apostrophe, so that taking one off gives the text back. A number with its unit is no formula.
 */
export const guarded = (text: string): string => (isNumber.test(text) ? text : text.replace(/^(?=[=+\-@\t\r'])/, "'"))

export const unguarded = (cell: string): string => cell.replace(/^'(?=[=+\-@\t\r'])/, '')

const isNumber = /^[-+][\d.,]+(?: ?[%°A-Za-z][%°A-Za-z0-9²³/·]*)?$/
