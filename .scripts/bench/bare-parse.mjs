// Parses every record of a folder and does nothing else, to compare with.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseDocument } from 'yaml'

const folder = process.argv[2]
for (const name of readdirSync(folder))
  if (name.endsWith('.yaml')) parseDocument(readFileSync(join(folder, name), 'utf8'))
