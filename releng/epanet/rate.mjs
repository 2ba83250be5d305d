// SPDX-License-Identifier: EPL-2.0
// Prints how many networks a second EPANET solves: each network opened once, one length of the unit's pipe changed each time, solved again through
// initH and runH. With the argument on-request it is the other side of releng/benchmark epanet.
import { createInterface } from 'node:readline';
import { Project, Workspace, LinkProperty, InitHydOption } from 'epanet-js';

const NETWORKS = {
  // The two-branch network of the check values with the tap open (N1b).
  'one tap': {
    shortest: 8,
    text: `[JUNCTIONS]
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
`,
  },
  // A house of ten pipes with four taps open.
  'four taps': {
    shortest: 3,
    text: `[JUNCTIONS]
stop 0.2 0
tee 0.5 0
loft 2.5 0
unit 4.0 0
landing 1.5 0
bath 1.5 0
hall 0.5 0
basin 1.0 0
sink 1.0 0
garden 0.8 0
[RESERVOIRS]
main 20.394
[PIPES]
service main stop 9 20.0 0.007 3 Open
common stop tee 6 20.0 0.007 3 Open
riser tee loft 5 13.6 0.0015 4 Open
shower loft unit 3 13.6 0.0015 4 Open
upstairs tee landing 4 20.0 0.0015 2 Open
bathpipe landing bath 2 20.0 0.0015 2 Open
downstairs tee hall 3 13.6 0.0015 2 Open
basinpipe hall basin 2 13.6 0.0015 3 Open
sinkpipe tee sink 6 13.6 0.0015 5 Open
gardenpipe tee garden 8 13.6 0.0015 5 Open
[EMITTERS]
unit 2.50528
bath 5.31434
basin 3
sink 4
garden 5
`,
  },
};
const OPTIONS = `[OPTIONS]
Units LPM
Headloss D-W
Viscosity 1.278
Accuracy 0.0001
Trials 200
[END]
`;
const COUNT = 50000;

const workspace = new Workspace();
if (workspace.loadModule) await workspace.loadModule();

function opened({ shortest, text }, number) {
  const model = new Project(workspace);
  workspace.writeFile(`net${number}.inp`, text + OPTIONS);
  model.open(`net${number}.inp`, `report${number}.rpt`, `out${number}.bin`);
  model.openH();
  const pipe = model.getLinkIndex('shower');
  const flowAt = (i) => {
    model.setLinkValue(pipe, LinkProperty.Length, shortest + (i % 100) * 0.01);
    model.initH(InitHydOption ? InitHydOption.NoSave : 0);
    model.runH();
    return model.getLinkValue(pipe, LinkProperty.Flow);
  };
  const rate = () => {
    const begin = process.hrtime.bigint();
    for (let i = 0; i < COUNT; i++) flowAt(i);
    return COUNT / (Number(process.hrtime.bigint() - begin) / 1e9);
  };
  for (let i = 0; i < 20000; i++) flowAt(i);
  return { flowAt, rate };
}

const models = new Map(Object.entries(NETWORKS).map(([name, network], number) => [name, opened(network, number)]));
if (process.argv[2] === 'on-request') {
  // Asked with the name of a network and the word flows, the flows through the unit at the hundred lengths, L/min; with its name alone, one round.
  for await (const line of createInterface({ input: process.stdin })) {
    const [name, flows] = line.split(',');
    const { flowAt, rate } = models.get(name);
    console.log(flows ? Array.from({ length: 100 }, (_, i) => flowAt(i)).join(',') : rate());
  }
} else {
  for (const [name, { flowAt, rate }] of models) {
    const rates = Array.from({ length: 5 }, rate).sort((a, b) => a - b);
    console.log(`EPANET, ${name}: ${Math.round(rates[2])} networks a second (median of 5 rounds); flow at the shortest ${flowAt(0).toFixed(4)} L/min`);
  }
}
