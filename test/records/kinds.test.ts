import { expect, test } from 'vitest'
import { recordOfPath } from '../../server/src/records/kinds.ts'

test.each([
  ['tern-110.panel.yaml', 'panel', 'tern-110'],
  ['a/b/tern-110.panel.yml', 'panel', 'tern-110'],
  ['c:\\records\\tern 110.panel.json', 'panel', 'tern 110'],
  ['file:///a/tern.v2.panel.yaml', 'panel', 'tern.v2'],
  ['Tern.PANEL.YAML', 'panel', 'Tern'],
  ['möwe.Panel.Yml', 'panel', 'möwe'],
  ['.tern.panel.yaml', 'panel', '.tern'],
  ['a.controller.yaml', 'controller', 'a'],
  ['a.battery.yaml', 'battery', 'a'],
  ['a.climate.json', 'climate', 'a'],
  ['a.system.yml', 'system', 'a'],
  ['x.panel.system.yaml', 'system', 'x.panel'],
  ['wattproof.yaml', 'library', 'wattproof'],
  ['a/WattProof.YML', 'library', 'wattproof'],
])('%s is a %s called %s', (path, kind, id) => expect(recordOfPath(path)).toEqual({ kind, id }))

test.each([
  'panel.yaml',
  '.panel.yaml',
  'a/.panel.yaml',
  'a/._tern-110.panel.yaml',
  '.#tern-110.panel.yaml',
  'a.panel.yaml/readme',
  'a.panel.yaml.orig',
  'a.panel.yaml~',
  'a.panels.yaml',
  'a.panel.toml',
  'a.panel',
  'apanel.yaml',
  'my-wattproof.yaml',
  'wattproof.json',
  'wattproof',
  '',
])('%s is none of ours', (path) => expect(recordOfPath(path)).toBeNull())
