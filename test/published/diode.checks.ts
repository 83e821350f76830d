import { boltzmannVolt } from '../../server/src/physics/constants.ts'
import { currentAt, maxPower, openCircuit, voltageAt } from '../../server/src/physics/single-diode.ts'
import { shortCircuit } from '../physics/models/short-circuit.ts'
import { diodeAt } from '../../server/src/physics/diode-model.ts'
import { printed, relative, type Check } from './check.ts'

/** Sets il, i0, rs, rsh, n, cells; then voc, isc, vmp, imp, pmp; then points [V, A]. All at 298.15 K, to 17 of 20 digits. */
// prettier-ignore
const precise: [string, number[], number[], [number, number][]][] = [
  ['1/1', [1, 5e-10, 0.1, 300, 1.01, 72],
    [39.7481073798697327, 0.99966677771328115, 33.936894315455552, 0.84612386091448, 28.7148160456399206],
    [[8.0299206828019685, 0.97290925640288806], [24.0897620484059018, 0.9191855105014245], [38.1421232433093493, 0.49556813052516346]]],
  ['1/16', [1, 3e-8, 1, 3000, 1.3, 72],
    [41.62295144004257, 0.99966676228333262, 34.1929048576001091, 0.92242283715587803, 31.5403163093484963],
    [[8.4086770585944404, 0.99686335122995854], [25.2260311757833158, 0.98963410892825632], [39.9412160283235878, 0.40631951401559685]]],
  ['1/24', [8, 5e-10, 1, 3000, 1.3, 72],
    [56.497760164288862, 7.9973342085235364, 42.4277605271030022, 7.4702679404489972, 316.946739250665004],
    [[11.4136889220779540, 7.9935293290144307], [34.2410667662338568, 7.9649860912210452], [54.2150223798702768, 1.7049070807912876]]],
  ['1/25', [8, 3e-8, 0.1, 300, 1.01, 72],
    [36.2206774925269416, 7.9973342059039728, 30.1912514820871382, 7.4316072514077939, 224.369523443355081],
    [[7.3173085843489103, 7.9729490431971520], [21.9519257530467300, 7.9183821620844528], [34.7572157756573219, 3.5334315051495611]]],
  ['2/1', [0.5, 1e-9, 0.1, 300, 1.3, 140],
    [89.4220315419639908, 0.49983338885963358, 68.9638287518520618, 0.26747521768071226, 18.4461151074969929],
    [[18.0650568771644442, 0.43963655115286499], [54.1951706314933261, 0.31913430780291341], [85.8090201665311127, 0.12044332614708282]]],
  ['2/24', [2.5, 1e-9, 1, 3000, 1.5, 140],
    [116.67037262166866, 2.4991669437629284, 98.4414896703739304, 2.3370030014633822, 230.058056828190407],
    [[23.5697722468018682, 2.4913128473987272], [70.7093167404055976, 2.4748276070252294], [111.956418167108872, 1.1831274189059602]]],
]

const curves = 'pvlib-python 6382338, tests/data/precise_iv_curves, set/index'

const fromCurves = precise.flatMap(([index, [il, i0, rs, rsh, n, cells], [voc, isc, vmp, imp, pmp], points]) => {
  const d = { il: il!, i0: i0!, rs: rs!, rsh: rsh!, a: n! * cells! * boltzmannVolt * 298.15 }
  const best = maxPower(d)
  const source = `${curves} ${index}`
  return [
    relative('open circuit', source, openCircuit(d), voc!, 1e-12),
    relative('short circuit', source, shortCircuit(d), isc!, 1e-12),
    relative('voltage at maximum power', source, best.v, vmp!, 1e-11),
    relative('current at maximum power', source, best.i, imp!, 1e-11),
    relative('maximum power', source, best.p, pmp!, 1e-12),
    ...points.flatMap(([v, i]) => [
      relative(`current at ${v.toFixed(2)} V`, source, currentAt(d, v), i, 1e-9),
      relative(`voltage at ${i.toFixed(3)} A`, source, voltageAt(d, i), v, 1e-9),
    ]),
  ]
})

const single = { il: 10, i0: 1e-10, rs: 0.2, rsh: 3000, a: 1.7 }
const best = maxPower(single)
const singlediode = 'pvlib-python 6382338, tests/test_singlediode.py, test_batzelis (reference values)'

/** The parameters of De Soto's translation, at 800 W/m2 and 50 °C; gap 1.121 eV. */
const there = diodeAt(
  { il: 7.545, i0: 1.94e-9, rs: 0.094, rsh: 15.72, a: 0.473, ilSlope: 0.003, gap: 1.121, rsSlope: 0, gammaResidual: 0 },
  800,
  50,
)
const desoto = 'pvlib-python 6382338, tests/test_pvsystem.py, test_calcparams_desoto'

export const diodeChecks: readonly Check[] = [
  ...fromCurves,
  relative('short circuit', singlediode, shortCircuit(single), 9.999333377550565, 1e-12),
  relative('open circuit', singlediode, openCircuit(single), 43.05589965219406, 1e-12),
  relative('maximum power', singlediode, best.p, 342.21646055371264, 1e-12),
  relative('current at maximum power', singlediode, best.i, 9.513255314772051, 1e-7),
  printed('translated light current', desoto, there.il, '6.096'),
  printed('translated shunt resistance', desoto, there.rsh, '19.65'),
  printed('translated modified ideality', desoto, there.a, '0.5127'),
]
