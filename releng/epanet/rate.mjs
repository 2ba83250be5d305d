// SPDX-License-Identifier: EPL-2.0
// Prints how many networks a second EPANET solves: the two-branch network of the check values with the tap open (N1b), opened once, one
// length changed each time, solved again through initH and runH. With the argument on-request it is the other side of
// releng/benchmark epanet.
import { createInterface } from 'node:readline';
import { Project, Workspace, LinkProperty, InitHydOption } from 'epanet-js';

const workspace = new Workspace();
if (workspace.loadModule) await workspace.loadModule();
const model = new Project(workspace);
workspace.writeFile('net.inp', `[JUNCTIONS]
tee 0.5 0
unit 4.0 0
tap 1.0 0
[RESERVOIRS]
main 20.394
[PIPES]
common main tee 15 20.0 0.007 6 Open
shower tee unit 8 13.6 0.0015 8 Open
branch tee tap 6 13.6 0.0015 5 Open
[EMITTERS]
unit 2.50528
tap 5.31434
[OPTIONS]
Units LPM
Headloss D-W
Viscosity 1.278
Accuracy 0.0001
Trials 200
[END]
`);
model.open('net.inp', 'report.rpt', 'out.bin');
model.openH();
const pipe = model.getLinkIndex('shower');
const solve = (i) => {
  model.setLinkValue(pipe, LinkProperty.Length, 8 + (i % 100) * 0.01);
  model.initH(InitHydOption ? InitHydOption.NoSave : 0);
  model.runH();
  model.getLinkValue(pipe, LinkProperty.Flow);
};
const flowAt = (i) => (solve(i), model.getLinkValue(pipe, LinkProperty.Flow));
const round = () => {
  const begin = process.hrtime.bigint();
  const count = 50000;
  for (let i = 0; i < count; i++) solve(i);
  return count / (Number(process.hrtime.bigint() - begin) / 1e9);
};
for (let i = 0; i < 20000; i++) solve(i);
if (process.argv[2] === 'on-request') {
  // Each line read asks for one round; first the flows through the unit at the hundred lengths, L/min.
  console.log(Array.from({ length: 100 }, (_, i) => flowAt(i)).join(','));
  for await (const line of createInterface({ input: process.stdin })) console.log(line, round());
} else {
  const rates = Array.from({ length: 5 }, round).sort((a, b) => a - b);
  console.log(`EPANET: ${Math.round(rates[2])} networks a second (median of 5 rounds); flow at 8 m ${flowAt(0).toFixed(4)} L/min`);
}
