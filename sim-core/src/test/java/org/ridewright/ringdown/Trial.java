package org.ridewright.ringdown;
import java.util.*;
import java.util.stream.*;
import org.ridewright.signal.BandLimitedFit;
import org.ridewright.ringdown.DecayCurve.Place;
final class Trial {
  record Rec(double[] t, double[] a) {}
  static Rec record(SwingingMass m, double rate, double noise, double lsb, double jitter, double colour, long seed) {
    Random r = new Random(seed);
    double phase = r.nextDouble();
    int n = (int) (6 * rate); double[] t = new double[n], a = new double[n]; double[] tt=new double[n];
    double c = 0; 
    for (int i = 0; i < n; i++) { tt[i] = (i + phase) / rate; double ti = tt[i] + Math.max(-0.45,Math.min(0.45,jitter * r.nextGaussian())) / rate;
      double w = noise * r.nextGaussian(); c = colour * c + Math.sqrt(1 - colour * colour) * w;
      double v = m.acceleration(ti - 0.5) + c + 0.013; a[i] = lsb > 0 ? lsb * Math.rint(v / lsb) : v; t[i] = ti; }
    if (Boolean.getBoolean("unrec")) return new Rec(tt, a);
    if (jitter > 0 && Boolean.getBoolean("blf")) { double[] u = BandLimitedFit.uniform(t, a, rate); double[] g = new double[u.length]; for (int i = 0; i < g.length; i++) g[i] = t[0] + i / rate; return new Rec(g, u);} 
    return new Rec(t, a);
  }
  static double[] stats(SwingingMass m, double rate, double noise, double lsb, double jitter, double colour, int N) {
    int[] ok = new int[4]; double[][] z = new double[4][N]; double[] kinds=new double[4]; double[] bias=new double[3]; double[] se=new double[3]; double[] sd=new double[3];
    for (int s = 0; s < N; s++) {
      Rec rec = record(m, rate, noise, lsb, jitter, colour, s);
      double end = 5.5;
      int from=0; while (rec.t[from] < 0.5) from++;
      int to=0; while (to<rec.t.length && rec.t[to] < end) to++;
      double[] t = Arrays.copyOfRange(rec.t, from, to), a = Arrays.copyOfRange(rec.a, from, to);
      double a0 = -m.omega()*m.omega()*(m.lift()-m.frictionLength());
      DecayFit.Fitted f = new DecayFit(t, a).mixed(new Guess(0.5+ 0.3/rate, 0.5/m.frequency()*1.02, a0*0.95, 0.3, 6));
      double w = Math.exp(f.value(Place.LOG_OMEGA));
      Estimate e1 = f.estimate(Place.FRICTION), e2 = f.estimate(Place.ZETA), e0=f.estimate(Place.LOG_OMEGA);
      double len=e1.value()/w/w; double sl = Math.sqrt(Math.pow(e1.standardError(),2)/w/w/w/w + Math.pow(2*len*e0.standardError(),2) - 4*len/w/w*f.covariance(Place.FRICTION,Place.LOG_OMEGA));
      Estimate e3 = Estimate.of(len, sl, f.fit().quantile());
      double[] truth={Math.log(m.omega()),m.friction(),m.zeta(),m.frictionLength()}; Estimate[] es={e0,e1,e2,e3};
      for(int k=0;k<4;k++){ if(truth[k]>=es[k].lower()&&truth[k]<=es[k].upper()) ok[k]++; z[k][s]=(es[k].value()-truth[k])/es[k].standardError(); }
      bias[0]+=(e1.value()-truth[1])/N; bias[1]+=(e2.value()-truth[2])/N; se[0]+=e1.standardError()/N; se[1]+=e2.standardError()/N;
    }
    StringBuilder b=new StringBuilder(); for(int k=0;k<4;k++){ double mean=Arrays.stream(z[k]).average().orElse(0); double sdz=Math.sqrt(Arrays.stream(z[k]).map(v->(v-mean)*(v-mean)).average().orElse(0)); b.append(String.format(Locale.ROOT," %5.1f%%(z %+.2f sd %.2f)",100.0*ok[k]/N,mean,sdz)); }
    System.out.printf(Locale.ROOT,"f=%.1f z=%.3f F/k=%.1fmm lift=%.0f rate=%3.0f noise=%.3f lsb=%.3f jit=%.2f col=%.1f : lnw,f,zeta,F/k %s  se f %.4f z %.4f%n",m.frequency(),m.zeta(),1000*m.frictionLength(),1000*m.lift(),rate,noise,lsb,jitter,colour,b,se[0],se[1]);
    return null;
  }
  public static void main(String[] x) {
    int N = Integer.parseInt(x[0]);
    long t0=System.currentTimeMillis();
    SwingingMass[] ms = { new SwingingMass(1.8, 0.03, 0.0025, 0.05), new SwingingMass(2.4,0.1,0.001,0.04)};
    for (SwingingMass m : ms) for (double[] c : new double[][]{{100,.05,0,0,0},{100,.05,0,0.15,0},{50,.05,0,.15,0},{100,.05,0,0,0.5}}) stats(m,c[0],c[1],c[2],c[3],c[4],N);
    System.out.println((System.currentTimeMillis()-t0)/1000.0);
  }
}
