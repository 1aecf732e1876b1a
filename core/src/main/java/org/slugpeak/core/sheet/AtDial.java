package org.slugpeak.core.sheet;

import java.util.Optional;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.figure.Conditions;
import org.slugpeak.core.figure.Figure;
import org.slugpeak.core.figure.FigureKind;
import org.slugpeak.core.figure.Handwork;
import org.slugpeak.core.figure.InputSetting;
import org.slugpeak.core.figure.Limit;
import org.slugpeak.core.figure.OutputReading;
import org.slugpeak.core.figure.Uncertainty;
import org.slugpeak.core.reading.Rounded;
import org.slugpeak.core.scale.ScaleEstimate;

/** What the measurements at one place of the dial share. One thread at a time. */
final class AtDial {

    /** As a hand can set an attenuator. */
    private static final int SETTABLE_DIGITS = 2;

    private final Station station;
    private final Conditions conditions;
    private final InputReach reach;
    private Optional<FoundInput> sensitivity = Optional.empty();

    AtDial(Station station, Conditions conditions, InputReach reach) {
        this.station = station;
        this.conditions = conditions;
        this.reach = reach;
    }

    Station station() {
        return station;
    }

    boolean readsPower() {
        return conditions.isPower();
    }

    boolean obeys() {
        return reach.obeys();
    }

    /** How well two marks of a dial that a hand sets are known apart, Hz; 0 where it obeys, or nobody knows how the dial errs. */
    double apartSigmaHz(double oneHz, double otherHz) {
        return Math.hypot(markSigmaHz(oneHz), markSigmaHz(otherHz));
    }

    private double markSigmaHz(double hz) {
        return reach.mark(hz).map(ScaleEstimate::combinedHz).orElse(0.0);
    }

    double highDb() {
        return Decibels.of(reach.mostEmfVolts());
    }

    double targetDb() {
        return Decibels.of(conditions.referenceVolts());
    }

    /** The input for the reference output; empty before it was found, or where it was not. */
    Optional<FoundInput> sensitivity() {
        return sensitivity;
    }

    void isAsSensitiveAs(FoundInput found) {
        sensitivity = found.isMeasured() ? Optional.of(found) : Optional.empty();
    }

    InputSearch search(double targetDb, double startDb) {
        return new InputSearch(targetDb, startDb, Decibels.of(reach.leastEmfVolts()), highDb());
    }

    InputSetting setting(double hz, double inputDb, boolean modulated, Handwork handwork) {
        double rounded = Rounded.toDigits(Decibels.ratio(inputDb), SETTABLE_DIGITS);
        return new InputSetting(hz, rounded, modulated, station.dialHz(), handwork, conditions.referenceVolts());
    }

    InputSetting atDial(double inputDb, boolean modulated) {
        return setting(station.dialHz(), inputDb, modulated, Handwork.NONE);
    }

    static TransferPoint point(InputSetting set, OutputReading reading) {
        return new TransferPoint(Decibels.of(set.emfVolts()), reading.levelDb(), reading.uncertainty());
    }

    /** With what the attenuator adds. */
    Uncertainty set(Uncertainty of) {
        return of.setWithin(conditions.knownAttenuatorDb());
    }

    Figure figure(FigureKind kind, double value, Uncertainty uncertainty, Figure.Outcome outcome) {
        return new Figure(kind, station.dialHz(), value, uncertainty.sigmaDb(), uncertainty.limit(), outcome);
    }

    /** Of a ratio that noise alone makes uncertain. */
    Figure ratio(FigureKind kind, double value, double sigma) {
        return new Figure(kind, station.dialHz(), value, sigma, Limit.NOISE, Figure.Outcome.MEASURED);
    }

    Figure missing(FigureKind kind) {
        return Figure.missing(kind, station.dialHz());
    }
}
