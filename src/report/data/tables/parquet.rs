//! Tables as Apache Parquet files, uncompressed, and their rows again.

use std::sync::Arc;

use bytes::Bytes;
use parquet::basic::{LogicalType, Repetition, TimeUnit, Type as Physical};
use parquet::data_type::{BoolType, ByteArray, ByteArrayType, DataType, DoubleType, Int64Type};
use parquet::errors::ParquetError;
use parquet::file::metadata::KeyValue;
use parquet::file::properties::WriterProperties;
use parquet::file::reader::{FileReader, SerializedFileReader};
use parquet::file::writer::{SerializedColumnWriter, SerializedFileWriter};
use parquet::record::Field as RecordField;
use parquet::schema::types::Type;

use super::columns::{Cell, Heading, Kind, Table};
use crate::error::{Error, Result};

/// The file's own key for what its data are.
const DESCRIPTION: &str = "description";

/// The file of a table, one row group. `description` says in it what its data are.
///
/// # Errors
/// [`Error::Internal`] for a cell that its heading does not allow.
pub fn to_parquet(table: &Table, description: &str) -> Result<Vec<u8>> {
    let mut file = ParquetFile::begin(&table.headings, description)?;
    file.add(table)?;
    file.finish()
}

/// A file on its way, a row group a table.
///
/// # Source
/// Apache Parquet format, logical types: UTF-8 text is `STRING`, a moment is `TIMESTAMP`
/// in microseconds with `isAdjustedToUTC`; a null has definition level 0.
pub struct ParquetFile(SerializedFileWriter<Vec<u8>>);

impl ParquetFile {
    /// A file with columns of these headings.
    ///
    /// # Errors
    /// [`Error::Internal`] for headings that make no schema.
    pub fn begin(headings: &[Heading], description: &str) -> Result<Self> {
        let fields = headings.iter().map(field);
        let fields = fields.collect::<std::result::Result<Vec<_>, _>>();
        let schema = Type::group_type_builder("row")
            .with_fields(fields.map_err(internal)?)
            .build()
            .map_err(internal)?;
        let properties = WriterProperties::builder()
            .set_created_by(format!("simmerline version {}", env!("CARGO_PKG_VERSION")))
            .set_key_value_metadata(Some(vec![KeyValue::new(
                DESCRIPTION.to_owned(),
                description.to_owned(),
            )]))
            .build();
        SerializedFileWriter::new(Vec::new(), Arc::new(schema), Arc::new(properties))
            .map(ParquetFile)
            .map_err(internal)
    }

    /// Adds the rows of a table with the file's headings.
    ///
    /// # Errors
    /// [`Error::Internal`] for a cell that its heading does not allow.
    pub fn add(&mut self, table: &Table) -> Result<()> {
        let mut group = self.0.next_row_group().map_err(internal)?;
        for (place, heading) in table.headings.iter().enumerate() {
            let mut writer = group
                .next_column()
                .map_err(internal)?
                .ok_or_else(|| Error::Internal(format!("no column for {}", heading.name)))?;
            let cells = table.rows.iter().map(|row| &row[place]);
            write_column(&mut writer, heading, cells)?;
            writer.close().map_err(internal)?;
        }
        group.close().map(drop).map_err(internal)
    }

    /// The file's bytes.
    ///
    /// # Errors
    /// [`Error::Internal`] if its end cannot be made.
    pub fn finish(self) -> Result<Vec<u8>> {
        self.0.into_inner().map_err(internal)
    }
}

/// The rows of a file whose columns are those of `headings`; `None` where they are others.
///
/// # Errors
/// What is wrong with the file, in words.
pub fn read_rows(
    bytes: Vec<u8>,
    headings: &[Heading],
) -> std::result::Result<Option<Vec<Vec<Cell>>>, String> {
    let said = |error: ParquetError| error.to_string();
    let reader = SerializedFileReader::new(Bytes::from(bytes)).map_err(said)?;
    let columns = reader.metadata().file_metadata().schema().get_fields();
    let expected = headings.iter().map(field);
    let expected = expected.collect::<std::result::Result<Vec<_>, _>>();
    if *columns != *expected.map_err(said)? {
        return Ok(None);
    }
    let rows = reader.get_row_iter(None).map_err(said)?;
    let rows = rows.map(|row| Ok(row.map_err(said)?.into_columns().into_iter().map(cell)));
    let rows = rows.map(|row: std::result::Result<_, String>| row?.collect());
    rows.collect::<std::result::Result<_, _>>().map(Some)
}

/// A value as a cell; of a moment its local time is not in the file.
fn cell((name, value): (String, RecordField)) -> std::result::Result<Cell, String> {
    Ok(match value {
        RecordField::Null => Cell::Null,
        RecordField::Str(text) => Cell::Text(text),
        RecordField::Double(number) => Cell::Number(number),
        RecordField::Long(count) => Cell::Count(count),
        RecordField::Bool(truth) => Cell::Truth(truth),
        RecordField::TimestampMicros(us) => Cell::Instant {
            us,
            local: String::new(),
        },
        other => return Err(format!("{name}: {other} is of no kind that is written")),
    })
}

fn internal(error: ParquetError) -> Error {
    Error::Internal(error.to_string())
}

fn field(heading: &Heading) -> std::result::Result<Arc<Type>, ParquetError> {
    let (physical, logical) = match heading.kind {
        Kind::Text => (Physical::BYTE_ARRAY, Some(LogicalType::String)),
        Kind::Number => (Physical::DOUBLE, None),
        Kind::Count => (Physical::INT64, None),
        Kind::Truth => (Physical::BOOLEAN, None),
        Kind::Instant => {
            let is_adjusted_to_utc = true;
            let microseconds = LogicalType::timestamp(is_adjusted_to_utc, TimeUnit::MICROS);
            (Physical::INT64, Some(microseconds))
        }
    };
    let repetition = if heading.is_required {
        Repetition::REQUIRED
    } else {
        Repetition::OPTIONAL
    };
    Type::primitive_type_builder(heading.name, physical)
        .with_logical_type(logical)
        .with_repetition(repetition)
        .build()
        .map(Arc::new)
}

fn write_column<'c>(
    writer: &mut SerializedColumnWriter<'_>,
    heading: &Heading,
    cells: impl Iterator<Item = &'c Cell>,
) -> Result<()> {
    match heading.kind {
        Kind::Text => write_values::<ByteArrayType>(writer, heading, cells, |cell| match cell {
            Cell::Text(text) => Some(ByteArray::from(text.as_str())),
            _ => None,
        }),
        Kind::Number => write_values::<DoubleType>(writer, heading, cells, |cell| match cell {
            Cell::Number(number) => Some(*number),
            _ => None,
        }),
        Kind::Count => write_values::<Int64Type>(writer, heading, cells, |cell| match cell {
            Cell::Count(count) => Some(*count),
            _ => None,
        }),
        Kind::Truth => write_values::<BoolType>(writer, heading, cells, |cell| match cell {
            Cell::Truth(truth) => Some(*truth),
            _ => None,
        }),
        Kind::Instant => write_values::<Int64Type>(writer, heading, cells, |cell| match cell {
            Cell::Instant { us, .. } => Some(*us),
            _ => None,
        }),
    }
}

/// Writes the values that there are, and for each row whether there is one.
fn write_values<'c, T: DataType>(
    writer: &mut SerializedColumnWriter<'_>,
    heading: &Heading,
    cells: impl Iterator<Item = &'c Cell>,
    value_of: impl Fn(&Cell) -> Option<T::T>,
) -> Result<()> {
    let (mut values, mut levels) = (Vec::new(), Vec::new());
    for cell in cells {
        let value = value_of(cell);
        let is_allowed = match cell {
            Cell::Null => !heading.is_required,
            _ => value.is_some(),
        };
        if !is_allowed {
            let what = format!("{cell:?} in column {} of {:?}", heading.name, heading.kind);
            return Err(Error::Internal(what));
        }
        levels.push(i16::from(value.is_some()));
        values.extend(value);
    }
    let levels = (!heading.is_required).then_some(levels.as_slice());
    writer
        .typed::<T>()
        .write_batch(&values, levels, None)
        .map(|_| ())
        .map_err(|error| Error::Internal(error.to_string()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_null_or_another_kind_in_a_required_column_is_our_fault() {
        for wrong in [Cell::Null, Cell::Truth(true), Cell::Count(1)] {
            let mut table = Table::new(vec![Heading::number("power_w", "W", "Power")]);
            table.rows = vec![vec![Cell::Number(1.0)], vec![wrong.clone()]];
            assert!(
                matches!(to_parquet(&table, ""), Err(Error::Internal(_))),
                "{wrong:?}"
            );
        }
    }
}
