package org.firnline.app.store.series;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.firnline.app.store.audit.Digest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads series and holds their chain of blocks against their hashes. */
@Repository
public class StoredSeries {
  private final JdbcClient database;

  /** Series in this database. */
  public StoredSeries(JdbcClient database) {
    this.database = database;
  }

  @SuppressWarnings("ArrayRecordComponent") // never compared
  record Block(long position, byte[] packed, String hash) {}

  /** The series of a run, in the order they were started. */
  public List<SeriesName> list(long runId) {
    return database
        .sql("select id, channel, unit from series where run_id = :run_id order by id")
        .param("run_id", runId)
        .query(
            (row, number) ->
                new SeriesName(row.getLong("id"), row.getString("channel"), row.getString("unit")))
        .list();
  }

  /** All samples. */
  public Samples read(long seriesId) {
    return read(seriesId, Long.MIN_VALUE, Long.MAX_VALUE);
  }

  /**
   * The samples of all blocks that reach into a stretch of time; some lie outside of it.
   *
   * @param from_ms first time, milliseconds since 1970
   * @param to_ms last time, milliseconds since 1970
   */
  public Samples read(long seriesId, long from_ms, long to_ms) {
    List<Samples> parts = new ArrayList<>();
    for (byte[] packed :
        database
            .sql(
                """
                select packed from series_block
                where series_id = :series_id and last_ms >= :from_ms and first_ms <= :to_ms
                order by position
                """)
            .param("series_id", seriesId)
            .param("from_ms", from_ms)
            .param("to_ms", to_ms)
            .query((row, number) -> row.getBytes("packed"))
            .list()) {
      parts.add(SeriesCodec.unpack(packed));
    }
    return joined(parts);
  }

  /** The position of the first block of a series that was altered; empty if none was. */
  public Optional<Long> firstAltered(long seriesId) {
    String previous = "";
    long expected = 0;
    for (Block block : blocks(seriesId)) {
      previous = chained(previous, block.packed());
      if (block.position() != expected || !previous.equals(block.hash())) {
        return Optional.of(expected);
      }
      expected++;
    }
    return Optional.empty();
  }

  private static Samples joined(List<Samples> parts) {
    int size = parts.stream().mapToInt(Samples::size).sum();
    long[] times = new long[size];
    double[] values = new double[size];
    int at = 0;
    for (Samples part : parts) {
      System.arraycopy(part.time_ms(), 0, times, at, part.size());
      System.arraycopy(part.value(), 0, values, at, part.size());
      at += part.size();
    }
    return new Samples(times, values);
  }

  Optional<Block> lastBlock(long seriesId) {
    return database
        .sql(
            """
            select position, packed, hash from series_block
            where series_id = :series_id order by position desc limit 1
            """)
        .param("series_id", seriesId)
        .query(StoredSeries::block)
        .optional();
  }

  private List<Block> blocks(long seriesId) {
    return database
        .sql(
            """
            select position, packed, hash from series_block
            where series_id = :series_id order by position
            """)
        .param("series_id", seriesId)
        .query(StoredSeries::block)
        .list();
  }

  private static Block block(ResultSet row, int number) throws SQLException {
    return new Block(row.getLong("position"), row.getBytes("packed"), row.getString("hash"));
  }

  static String chained(String previous, byte[] packed) {
    return new Digest().add(previous).add(packed).hex();
  }
}
