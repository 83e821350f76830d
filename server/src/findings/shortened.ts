/** What a person reads at a glance: of a message that quotes more, the beginning and the advice at its end are kept. */
const longest = 300

export function shortened(message: string): string {
  if (message.length <= longest) return message
  const beginning = message.slice(0, 200).replace(/[\ud800-\udbff]$/, '')
  return `${beginning} … ${message.slice(-90).replace(/^[\udc00-\udfff]/, '')}`
}
