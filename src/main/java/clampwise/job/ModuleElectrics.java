package clampwise.job;

import clampwise.job.Quantity.Current;
import clampwise.job.Quantity.TemperatureRate;
import clampwise.job.Quantity.Voltage;
import java.util.Optional;

/** Electrical ratings of a module at standard test conditions. */
public record ModuleElectrics(
    @Doc("Open-circuit voltage.") Optional<Voltage> voc,
    @Doc("Change of the open-circuit voltage by temperature, such as -0.27 %/°C.")
        Optional<TemperatureRate> vocCoefficient,
    @Doc("Short-circuit current.") Optional<Current> isc,
    @Doc("Largest series fuse.") Optional<Current> seriesFuseAtMost,
    @Doc("Largest system voltage.") Optional<Voltage> systemVoltageAtMost,
    @Doc("Maker and type of its connectors, in one name.") Optional<Text> connector) {}
