// SPDX-License-Identifier: EPL-2.0
// Reads networks as lines of comma-separated numbers from standard input, in the column order of epanet-networks.csv, solves
// each with EPANET, and prints: unit flow L/min, tap flow L/min, head at the tee m, smallest Reynolds number.
import { createInterface } from 'node:readline';
import { Project, Workspace, NodeProperty, LinkProperty } from 'epanet-js';

const VISCOSITY_AT_20C = 1.02193e-6; // m2/s: the unit of EPANET's viscosity option (1.1e-5 sq ft/s)
const VISCOSITY_AT_10C = 1.30614e-6; // m2/s, IAPWS-IF97

function input(n) {
  const [head, l0, d0, r0, k0, zt, l1, d1, r1, k1, z1, c1, l2, d2, r2, k2, z2, c2] = n;
  return `[TITLE]
cross-check
[JUNCTIONS]
tee ${zt} 0
unit ${z1} 0
tap ${z2} 0
[RESERVOIRS]
main ${head}
[PIPES]
common main tee ${l0} ${d0} ${r0} ${k0} Open
shower tee unit ${l1} ${d1} ${r1} ${k1} Open
branch tee tap ${l2} ${d2} ${r2} ${k2} Open
[EMITTERS]
unit ${c1}
tap ${c2}
[OPTIONS]
Units LPM
Headloss D-W
Viscosity ${VISCOSITY_AT_10C / VISCOSITY_AT_20C}
Accuracy 0.00000001
Trials 400
Emitter Exponent 0.5
[END]
`;
}

const workspace = new Workspace();
if (workspace.loadModule) await workspace.loadModule();
export function solve(numbers) {
  const model = new Project(workspace);
  workspace.writeFile('net.inp', input(numbers));
  model.open('net.inp', 'report.rpt', 'out.bin');
  model.openH();
  model.initH(11);
  model.runH();
  const flow = (name) => model.getLinkValue(model.getLinkIndex(name), LinkProperty.Flow);
  const flows = ['common', 'shower', 'branch'].map(flow);
  const head = model.getNodeValue(model.getNodeIndex('tee'), NodeProperty.Head);
  model.closeH();
  model.close();
  const bores = [numbers[2], numbers[7], numbers[13]];
  const reynolds = flows.map((q, i) => (4 * q / 60000) / (Math.PI * (bores[i] / 1000) * VISCOSITY_AT_10C));
  return [flows[1], flows[2], head, Math.min(...reynolds)];
}

for await (const line of createInterface({ input: process.stdin })) {
  if (line.trim()) console.log(solve(line.split(',').map(Number)).join(','));
}
