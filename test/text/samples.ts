/** A record in every style that people type: block and flow, comments, quotes, lists, empty fields. */
export const record = `# Typed from the sheet
format: 1
name: Tern 110
maker: "Example Panel Works"   # invented
construction: flexible
cells: { technology: mono, in_series: 36, parallel_strings: 1 }
stc:                              # 1000 W/m2
  pmax: 110 W
  vmp: 18.6 V
  imp: 5.92 A   # as printed
  voc: '22.1 V'
temperature_coefficients: { pmax: -0.38 %/°C, voc: -0.29 %/°C,
  isc: 0.05 %/°C }
size:
    length: 1190 mm
    width: 540 mm
price: { amount: 289 USD, from: Example Chandlery }  # asked by phone
warranty:
  output: [{ years: 5, at_least: 80 % }]
  exclusions: [uv, foot traffic, salt water]
  steps:
    - years: 1
      at_least: 97 %
    - { years: 25, at_least: 80 % }
certificates: []
notes: |
  Two lines # not a comment
  of text: with a colon
datasheet: { source: sheets/tern-110.pdf, page: 2 }
weight: 2.2 kg
`
