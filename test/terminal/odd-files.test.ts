import { spawnSync } from 'node:child_process'
import { chmodSync, mkdirSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { bad } from './records.ts'
import { git, program, scratch, wattproof } from './run.ts'

const isUnix = process.platform !== 'win32'

function findingsOf(cwd: string, ...args: string[]) {
  const run = wattproof(['check', ...args, '--format', 'json'], { cwd })
  const { files } = JSON.parse(run.out) as { files: { path: string; findings: { rule: string; message: string }[] }[] }
  const unread = files.flatMap(({ path, findings }) =>
    findings.flatMap(({ rule, message }) => (rule === 'file-not-read' ? [`${path}: ${message}`] : [])),
  )
  return { code: run.code, err: run.err, unread, paths: files.map(({ path }) => path) }
}

interface Case {
  readonly what: string
  readonly make: (cwd: string) => void
  readonly path?: string
  readonly says: string
}

const cases: readonly Case[] = [
  {
    what: 'a link to a device without end',
    make: (cwd) => symlinkSync('/dev/zero', join(cwd, 'odd.panel.yaml')),
    says: 'it is a link that leads out of its library',
  },
  {
    what: 'a link out of the library',
    make: (cwd) => symlinkSync('/etc/hostname', join(cwd, 'odd.panel.yaml')),
    says: 'it is a link that leads out of its library',
  },
  {
    what: 'a pipe that nobody writes to',
    make: (cwd) => spawnSync('mkfifo', [join(cwd, 'odd.panel.yaml')]),
    says: 'it is no regular file',
  },
  {
    what: 'links in a circle',
    make: (cwd) => {
      symlinkSync('odd.panel.yaml', join(cwd, 'b.panel.yaml'))
      symlinkSync('b.panel.yaml', join(cwd, 'odd.panel.yaml'))
    },
    says: 'its links lead in a circle',
  },
  {
    what: 'a link to a folder',
    make: (cwd) => {
      mkdirSync(join(cwd, 'inner'))
      symlinkSync('inner', join(cwd, 'odd.panel.yaml'))
    },
    says: 'it is a folder, not a record',
  },
  {
    what: 'a file of another size than records have',
    make: (cwd) => writeFileSync(join(cwd, 'odd.panel.yaml'), 'x'.repeat(3 << 20)),
    says: 'it has 3.0 MiB, and a record has a few KiB',
  },
]

describe.runIf(isUnix)('what is no record is said, and the rest is reported', () => {
  const all = cases.flatMap((one) => [
    { ...one, where: 'in a folder', inGit: false },
    { ...one, where: 'in a repository', inGit: true },
  ])
  test.each(all)('$what $where', ({ make, says, inGit }) => {
    const cwd = scratch({ 'bad.panel.yaml': bad })
    make(cwd)
    if (inGit) git(cwd, 'init', '-q')
    const named = says.includes('a folder') ? [] : [['odd.panel.yaml', 'bad.panel.yaml']] // a person may name a folder
    for (const args of [[], ...named]) {
      const { code, err, unread, paths } = findingsOf(cwd, ...args)
      if (!(inGit && args.length === 0 && says.startsWith('it is no regular')))
        // git does not list a pipe
        expect(unread).toContain(`odd.panel.yaml: This file was not read: ${says}.`)
      expect(paths).toContain('bad.panel.yaml')
      if (unread.length > 0) {
        expect(code).toBe(2)
        expect(err).toMatch(/^wattproof: .*odd\.panel\.yaml.*: not read, so the run is not complete\n$/)
      }
    }
  })

  test('a submodule under the name of a record', () => {
    const cwd = scratch({ 'bad.panel.yaml': bad })
    const other = scratch({ 'x.txt': 'x' })
    git(other, 'init', '-q')
    git(other, 'add', '.')
    git(other, 'commit', '-qm', 'x')
    git(cwd, 'init', '-q')
    git(cwd, '-c', 'protocol.file.allow=always', 'submodule', '--quiet', 'add', other, 'odd.panel.yaml')
    const { code, unread, paths } = findingsOf(cwd)
    expect(unread).toEqual(['odd.panel.yaml: This file was not read: it is a folder, not a record.'])
    expect(paths).toContain('bad.panel.yaml')
    expect(code).toBe(2)
  })

  test('a link inside the library is followed', () => {
    const cwd = scratch({ 'wattproof.yaml': 'format: 1\n', 'a/bad.panel.yaml': bad })
    mkdirSync(join(cwd, 'b'))
    symlinkSync('../a/bad.panel.yaml', join(cwd, 'b', 'same.panel.yaml'))
    const { code, unread, paths } = findingsOf(cwd)
    expect({ code, unread }).toEqual({ code: 1, unread: [] })
    expect(paths).toContain('b/same.panel.yaml')
  })

  test('what another user may not open, file and folder', () => {
    const cwd = scratch({ 'bad.panel.yaml': bad, 'shut.panel.yaml': bad, 'closed/in.panel.yaml': bad })
    chmodSync(cwd, 0o755)
    chmodSync(join(cwd, 'shut.panel.yaml'), 0)
    chmodSync(join(cwd, 'closed'), 0)
    // the superuser may open everything, so another user looks
    const other = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {}
    const run = spawnSync(process.execPath, [program, 'check', '--format', 'json'], { cwd, encoding: 'utf8', ...other })
    chmodSync(join(cwd, 'closed'), 0o700)
    expect(run.stdout).toContain('This file was not read: you have no permission to open it.')
    expect(run.stdout).toContain('This folder was not read: you have no permission to open it.')
    expect(run.stdout).toContain('"path": "bad.panel.yaml"')
    expect(run.status).toBe(2)
  })

  test.each([
    { what: 'a newline', name: Buffer.from('a\nb.panel.yaml'), path: 'a\nb.panel.yaml', rule: 'voc-below-vmp' },
    {
      what: 'bytes that are no text',
      name: Buffer.from('a\xff.panel.yaml', 'latin1'),
      path: 'a\ufffd.panel.yaml',
      rule: 'file-not-read',
    },
  ])('a name with $what is reported, in a folder and in a repository', ({ name, path, rule }) => {
    const cwd = scratch()
    writeFileSync(Buffer.concat([Buffer.from(`${cwd}/`), name]), bad)
    for (const prepare of [() => {}, () => git(cwd, 'init', '-q')]) {
      prepare()
      const run = wattproof(['check', '--format', 'json'], { cwd })
      const { files } = JSON.parse(run.out) as { files: { path: string; findings: { rule: string }[] }[] }
      expect(files.map((file) => file.path)).toEqual([path])
      expect(files[0]!.findings.map((one) => one.rule)).toContain(rule)
    }
  })
})

test.each([
  { encoding: 'UTF-16', bytes: Buffer.from(`\ufeff${bad}`, 'utf16le') },
  { encoding: 'UTF-16', bytes: Buffer.from(bad, 'utf16le') },
  { encoding: 'UTF-16 (big-endian)', bytes: Buffer.from(`\ufeff${bad}`, 'utf16le').swap16() },
  { encoding: 'UTF-32', bytes: Buffer.concat([...bad].map((sign) => Buffer.from([sign.charCodeAt(0), 0, 0, 0]))) },
])('$encoding is named, as one finding', ({ encoding, bytes }) => {
  const cwd = scratch()
  writeFileSync(join(cwd, 'odd.panel.yaml'), bytes)
  const run = wattproof(['check'], { cwd })
  expect(run.out).toContain(`not-utf-8: The file is in ${encoding} and was not read: save it as UTF-8.`)
  expect(run.code).toBe(1)
})

test('a sign in Windows-1252 is found where it stands', () => {
  const cwd = scratch()
  writeFileSync(join(cwd, 'odd.panel.yaml'), Buffer.from('format: 1\nname: 25 \xb0C\n', 'latin1'))
  expect(wattproof(['check'], { cwd }).out).toMatch(/^odd\.panel\.yaml:2:10: error not-utf-8: /m)
})
