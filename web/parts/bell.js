// The bell: a buzz and two short tones, where the device allows them. Before the first tap a browser allows neither.

const BUZZ = [300, 150, 300];
const PITCH = 660;
const END = 0.9;
const LOUDNESS = [[0, 0.25], [0.35, 0], [0.5, 0.25], [0.85, 0]];

function tones() {
  const sound = new AudioContext();
  const [tone, volume] = [sound.createOscillator(), sound.createGain()];
  tone.frequency.value = PITCH;
  for (const [when, loudness] of LOUDNESS) volume.gain.setValueAtTime(loudness, when);
  tone.connect(volume).connect(sound.destination);
  tone.addEventListener("ended", () => sound.close());
  tone.start();
  tone.stop(END);
}

/** Ring, as far as this device does. */
export function ring() {
  if (!navigator.userActivation?.hasBeenActive) return;
  try {
    navigator.vibrate?.(BUZZ);
    tones();
  } catch {
    // Without sound the message on the page must do.
  }
}
