package org.ridewright.ringdown;
import java.util.*;
final class Trial2 {
  static void show(String name, double[] t, double[] a) {
    try { RingDowns r = RingDowns.of(List.of(new Stretch(t, a)), List.of(), RingDownOptions.USUAL);
      for (RingDown d : r.releases()) System.out.printf(Locale.ROOT, "%s: at %.3f end %.2f %s f %.4f±%.4f nat %.4f zeta %.4f [%.4f %.4f] fr %.4f [%.4f %.4f] F/k %.2f mm [%.2f %.2f] half %d %.2fs noise %.3f n %d/%.0f dry %.4f/%.3f visc %.4f/%.3f soft %s second %s %s%n", name, d.at(), d.end(), d.kind(), d.frequency().value(), d.frequency().standardError(), d.naturalFrequency().value(), d.dampingRatio().value(), d.dampingRatio().lower(), d.dampingRatio().upper(), d.friction().value(), d.friction().lower(), d.friction().upper(), 1000*d.frictionLength().value(), 1000*d.frictionLength().lower(), 1000*d.frictionLength().upper(), d.halfCycles(), d.counted(), d.noise(), d.samples(), d.independent(), d.dryOnly().value().value(), d.dryOnly().noise(), d.viscousOnly().value().value(), d.viscousOnly().noise(), d.softness(), d.second(), d.remarks());
      System.out.println("   left out " + r.leftOut());
    } catch (NoRingDownException e) { System.out.println(name + " REFUSED " + e.getMessage()); }
  }
  interface Fn { double at(double t); }
  static void run(String name, Fn fn, double length, double rate, double noise, long seed) {
    Random r = new Random(seed); int n = (int) (length * rate); double[] t = new double[n], a = new double[n];
    for (int i = 0; i < n; i++) { t[i] = i / rate; a[i] = fn.at(t[i]) + noise * r.nextGaussian(); }
    show(name, t, a);
  }
  public static void main(String[] x) {
    SwingingMass dry = new SwingingMass(1.8, 0, 0.004, -0.05), visc = new SwingingMass(2.1, 0.06, 0, 0.04), mixed = new SwingingMass(1.6, 0.03, 0.002, -0.06);
    run("dry", t -> dry.acceleration(t - 3.3), 12, 100, 0.03, 1);
    run("visc", t -> visc.acceleration(t - 3.3), 12, 100, 0.03, 2);
    run("mixed x3", t -> mixed.acceleration(t - 3.3) + (t < 11.2 ? 0 : 0) + (t>=10 ? dry.acceleration(t-10) : 0)+ (t>=16 ? visc.acceleration(t-16) : 0), 24, 100, 0.03, 3);
    run("beat", t -> t < 3 ? 0 : 2 * Math.exp(-0.04 * 2 * Math.PI * 1.7 * (t - 3)) * Math.cos(2 * Math.PI * 1.7 * (t - 3)) + 1.2 * Math.exp(-0.05 * 2 * Math.PI * 2.3 * (t - 3)) * Math.cos(2 * Math.PI * 2.3 * (t - 3) - 0.4), 10, 100, 0.03, 4);
    run("noise", t -> 0, 10, 100, 0.03, 5);
    run("one cycle", t -> new SwingingMass(1.8, 0, 0.02, -0.05).acceleration(t - 3), 10, 100, 0.03, 5);
    run("drift", t -> mixed.acceleration(t - 3.3) + 0.1 * Math.sin(2 * Math.PI * t / 20), 12, 100, 0.03, 1);
    run("pumped", t -> { double w = 2 * Math.PI * 1.6; return t < 5 ? -0.8 * t * Math.cos(w * (t - 5)) : new SwingingMass(1.6, 0.03, 0.002, 4 / w / w + 0.002).acceleration(t - 5); }, 14, 100, 0.03, 6);
    run("slow hands", t -> { double s = Math.min(1, Math.max(0, (t - 3.2) / 0.15)); return s * mixed.acceleration(t - 3.25); }, 12, 100, 0.03, 7);
    run("random", new Fn() { Random r = new Random(4); double v = 0, u = 0; public double at(double t) { v += -0.05 * v - 0.015 * u + r.nextGaussian() * .3; u += v; return u * 0.3; } }, 30, 100, 0.03, 8);
    Softly soft = new Softly(1.8, 0.02, 0.004, 0.5, 0.05);
    run("soft", t -> soft.at(t - 3), 12, 100, 0.03, 9);
    for (double fk : new double[] {0.003, 0.005, 0.008}) for (double q : new double[]{0.17, 0.5, 1}) { Softly l = new Softly(1.6, 0.05, fk, q, 0.05); run("soft " + fk + " " + q, t -> l.at(t - 3), 12, 100, 0.05, 9); }
    Softly leaf = new Softly(1.8, 0.02, 0.006, 0.5, 0.05);
    run("leaf", t -> leaf.at(t - 3), 12, 100, 0.03, 9);
  }
  /** Fine Runge-Kutta of the slider. */
  static final class Softly { final double[] a; static final double H = 1e-4;
    Softly(double f, double zeta, double fk, double q, double lift) { double w = 2 * Math.PI * f, F = fk * w * w; int n = (int) (15 / H); a = new double[n]; double y = lift, v = 0, s = F;
      for (int i = 0; i < n; i++) { double acc = -2 * zeta * w * v - w * w * y - s; a[i] = acc; v += H * acc; double dy = H * v; y += dy; s = Math.max(-F, Math.min(F, s + w * w / q * dy)); } }
    double at(double t) { return t < 0 ? 0 : a[Math.min(a.length - 1, (int) (t / H))]; }
  }
}
