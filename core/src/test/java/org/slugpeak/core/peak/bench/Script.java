package org.slugpeak.core.peak.bench;

import java.util.ArrayList;
import java.util.List;

/** A hand that turns as written down: from place to place at one speed, with rests, whatever is told. */
final class Script {

    /**
     * A place at a time.
     *
     * @param seconds when
     * @param degrees where
     */
    private record Point(double seconds, double degrees) {}

    private final double speed;
    private final List<Point> points = new ArrayList<>();

    Script(double startDegrees, double degreesPerSecond) {
        this.speed = degreesPerSecond;
        points.add(new Point(0, startDegrees));
    }

    private Point last() {
        return points.get(points.size() - 1);
    }

    Script rest(double seconds) {
        points.add(new Point(last().seconds() + seconds, last().degrees()));
        return this;
    }

    Script turnTo(double degrees) {
        double takes = Math.abs(degrees - last().degrees()) / speed;
        points.add(new Point(last().seconds() + takes, degrees));
        return this;
    }

    double endSeconds() {
        return last().seconds();
    }

    double degrees(double seconds) {
        Point before = points.get(0);
        for (Point point : points) {
            if (point.seconds() > seconds) {
                double part = (seconds - before.seconds()) / (point.seconds() - before.seconds());
                return before.degrees() + part * (point.degrees() - before.degrees());
            }
            before = point;
        }
        return before.degrees();
    }
}
