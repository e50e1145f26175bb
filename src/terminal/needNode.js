// Says which Node is needed before anything newer than this line can fail.
// Plain, old JavaScript on purpose: it must run on the Node that is too old.
var need = [22, 12];
var have = process.versions.node.split('.').map(Number);
if (have[0] < need[0] || (have[0] === need[0] && have[1] < need[1])) {
  console.error(
    'Bedfirst needs Node ' +
      need.join('.') +
      ' or newer; this is Node ' +
      process.versions.node +
      '.\n' +
      'On 64-bit Linux `npm ci` brings a fitting Node along: start everything through `npm run`.\n' +
      'Elsewhere install Node ' +
      need.join('.') +
      ' or newer and try again.',
  );
  process.exit(1);
}
