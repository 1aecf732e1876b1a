// Plays on this device what the terminal plays: a steady tone at the best, one that follows the reading, and notes that call.
const GLIDE_SECONDS = 0.015;
const RAMP_SECONDS = 0.008;
const VOICE = 0.12;

// Partials as [times the pitch, strength].
const TIMBRES = {
  PURE: [[1, 1]],
  HOLLOW: [[1, 0.75], [3, 0.25]],
  BRIGHT: [[1, 0.6], [2, 0.3], [4, 0.1]],
  ROUGH: [[1, 0.7], [2, 0.3]],
  KNOCK: [[1, 0.6], [2.76, 0.4]],
};
const ROUGH_HERTZ = 45;
const KNOCK_SECONDS = 1 / 8;

export class Ear {
  constructor() {
    this.on = false;
    this.context = null;
    this.score = null;
    this.events = null;
  }

  async turn(on) {
    this.on = on;
    if (on && !this.context) {
      this.context = new AudioContext();
      this.live = this.voice();
      this.reference = this.voice();
      this.score = await (await fetch('score.json')).json();
    }
    if (this.context) {
      await (on ? this.context.resume() : this.context.suspend());
    }
  }

  voice() {
    const pitch = new OscillatorNode(this.context, { frequency: 800 });
    const gain = new GainNode(this.context, { gain: 0 });
    pitch.connect(gain).connect(this.context.destination);
    pitch.start();
    return { pitch, gain, gate: 'SHUT', timer: 0 };
  }

  silence() {
    if (this.context) {
      this.aim(this.live, 800, 'SHUT');
      this.aim(this.reference, 800, 'SHUT');
    }
  }

  /** What is to be heard from now on. */
  follow(tone) {
    const isNew = this.events !== null && tone.number > this.events;
    this.events = tone.number;
    if (!this.on || !this.context) {
      return;
    }
    this.aim(this.live, tone.live, tone.liveGate);
    this.aim(this.reference, tone.reference, tone.referenceGate);
    if (isNew && this.score) {
      this.play(this.score.events[tone.event] || []);
    }
  }

  aim(voice, hertz, gate) {
    voice.pitch.frequency.setTargetAtTime(hertz, this.context.currentTime, GLIDE_SECONDS);
    if (gate === voice.gate) {
      return;
    }
    voice.gate = gate;
    clearInterval(voice.timer);
    const [period, open] = this.score ? this.score.gates[gate] : [1, 0];
    const through = () => {
      const now = this.context.currentTime;
      voice.gain.gain.cancelScheduledValues(now);
      voice.gain.gain.setTargetAtTime(open > 0 ? VOICE : 0, now, RAMP_SECONDS);
      if (open < period) {
        voice.gain.gain.setTargetAtTime(0, now + open, RAMP_SECONDS);
      }
    };
    through();
    if (open > 0 && open < period) {
      voice.timer = setInterval(through, period * 1000);
    }
  }

  play(notes) {
    for (const note of notes) {
      const start = this.context.currentTime + note.start;
      const envelope = new GainNode(this.context, { gain: 0 });
      envelope.gain.setTargetAtTime(note.gain, start, RAMP_SECONDS);
      if (note.timbre === 'KNOCK') {
        envelope.gain.setTargetAtTime(0, start + RAMP_SECONDS, KNOCK_SECONDS);
      }
      envelope.gain.setTargetAtTime(0, start + note.duration - 4 * RAMP_SECONDS, RAMP_SECONDS);
      let end = envelope;
      if (note.timbre === 'ROUGH') {
        end = new GainNode(this.context, { gain: 0.5 });
        const flutter = new OscillatorNode(this.context, { frequency: ROUGH_HERTZ });
        flutter.connect(new GainNode(this.context, { gain: 0.5 })).connect(end.gain);
        flutter.start(start);
        flutter.stop(start + note.duration);
        envelope.connect(end);
      }
      end.connect(this.context.destination);
      for (const [times, strength] of TIMBRES[note.timbre]) {
        const partial = new OscillatorNode(this.context, { frequency: note.hertz * times });
        partial.connect(new GainNode(this.context, { gain: strength })).connect(envelope);
        partial.start(start);
        partial.stop(start + note.duration);
      }
    }
  }
}
